"""The board drawn: paths, copper, holes, clamps and the machine's place, fluent at any size."""
