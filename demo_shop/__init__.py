"""The demo shop: an invented garage, its cars, jobs and photos, written by code from one seed."""
