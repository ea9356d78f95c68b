"""What joins the window to a machine: connecting, hands, live state, measuring, running, proof."""
