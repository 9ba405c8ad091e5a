"""Reading and writing the studio's own files: friendly values, models, problems with places."""
