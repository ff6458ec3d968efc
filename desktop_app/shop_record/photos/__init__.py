"""Where the photos are kept, each by its hash: in a folder or in the database."""
