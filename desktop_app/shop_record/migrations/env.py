"""Runs the numbered steps on the connection that was handed in, inside its transaction."""

from __future__ import annotations

from alembic import context

from desktop_app.shop_record.tables import Base

connection = context.config.attributes["connection"]
context.configure(connection=connection, target_metadata=Base.metadata)
with context.begin_transaction():
    context.run_migrations()
