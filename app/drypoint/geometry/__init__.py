"""Points, shapes and rigid motions. Millimetres and radians; no meaning beyond the plane."""
