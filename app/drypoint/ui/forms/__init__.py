"""Forms shared by the wizard and the pages: plain values in, plain values out."""
