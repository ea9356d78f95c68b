"""The language of the window: which one, how texts are looked up, how numbers are written."""
