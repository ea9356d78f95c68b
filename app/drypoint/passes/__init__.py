"""How deep to cut, what that reaches, and what to cut again."""
