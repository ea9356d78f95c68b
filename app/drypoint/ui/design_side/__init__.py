"""What joins the window to the job: files, pages of the design, planning, pictures, traveller, paper."""
