"""Who may do what on a server: three roles with no more rights than each needs.

`DATABASE_readers` look; `DATABASE_workers` do deeds, but can't change the history, the form of the
tables or what was chosen at set-up; the owner is who made the shop. People get a login of their
own in one of the two.
"""

from __future__ import annotations

from sqlalchemy import Connection, inspect
from sqlalchemy.exc import DBAPIError

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

HISTORY, PHOTOS = "history", "photo_content"
_ONLY_READ = ("alembic_version", "set_up")


def roles_of(database: str) -> tuple[str, str]:
    """Return the names of the two roles: who reads, who works."""
    return f"{database}_readers", f"{database}_workers"


def may_make_roles(connection: Connection) -> bool:
    """Tell whether who is connected may make roles on this server."""
    said = "SELECT rolcreaterole OR rolsuper FROM pg_roles WHERE rolname = current_user"
    return bool(connection.exec_driver_sql(said).scalar())


def give_rights(connection: Connection, database: str) -> tuple[str, str]:
    """Make both roles, where they are not there yet, and give them their rights."""
    readers, workers = roles_of(database)
    for role in (readers, workers):
        there = connection.exec_driver_sql("SELECT 1 FROM pg_roles WHERE rolname = %s", (role,))
        if there.first() is None:
            connection.exec_driver_sql(f'CREATE ROLE "{role}" NOLOGIN')
    for said in _rights(inspect(connection).get_table_names(), database, readers, workers):
        connection.exec_driver_sql(said)
    return readers, workers


def may_write(connection: Connection) -> bool:
    """Tell whether who is connected may do deeds."""
    try:
        said = "SELECT has_table_privilege('history', 'INSERT')"
        return bool(connection.exec_driver_sql(said).scalar())
    except DBAPIError:
        return False


def refuse_to_update(connection: Connection) -> None:
    """Raise ShopTrouble where who is connected can't bring the record up to date."""
    said = (
        "SELECT pg_has_role(relowner, 'USAGE'), pg_get_userbyid(relowner), current_user "
        "FROM pg_class WHERE oid = 'alembic_version'::regclass"
    )
    may, owner, user = connection.exec_driver_sql(said).one()
    if not may:
        raise ShopTrouble(
            tr(
                "This shop's record needs an update for this program, and {user} can't make it.",
                user=user,
            ),
            kept=tr("The record was not touched."),
            do=tr(
                "Its owner ({owner}) makes it by opening the shop once with this program.",
                owner=owner,
            ),
        )


def _rights(tables: list[str], database: str, readers: str, workers: str) -> list[str]:
    both = f'"{readers}", "{workers}"'
    said = [
        f'REVOKE ALL ON DATABASE "{database}" FROM PUBLIC',
        f'GRANT CONNECT ON DATABASE "{database}" TO {both}',
        "REVOKE CREATE ON SCHEMA public FROM PUBLIC",
        f"GRANT USAGE ON SCHEMA public TO {both}",
        f"GRANT SELECT ON ALL TABLES IN SCHEMA public TO {both}",
        f"GRANT SELECT ON ALL SEQUENCES IN SCHEMA public TO {both}",
        # Who brings jobs in by the thousand gives their numbers out himself, and sets them on.
        f'GRANT USAGE, UPDATE ON ALL SEQUENCES IN SCHEMA public TO "{workers}"',
        f"ALTER DEFAULT PRIVILEGES IN SCHEMA public GRANT SELECT ON TABLES TO {both}",
        "ALTER DEFAULT PRIVILEGES IN SCHEMA public GRANT INSERT, UPDATE, DELETE ON TABLES "
        f'TO "{workers}"',
        f"ALTER DEFAULT PRIVILEGES IN SCHEMA public GRANT SELECT ON SEQUENCES TO {both}",
        "ALTER DEFAULT PRIVILEGES IN SCHEMA public GRANT USAGE, UPDATE ON SEQUENCES "
        f'TO "{workers}"',
    ]
    for table in tables:
        if table in (HISTORY, PHOTOS):
            said.append(f'GRANT INSERT ON "{table}" TO "{workers}"')
        elif table not in _ONLY_READ:
            said.append(f'GRANT INSERT, UPDATE, DELETE ON "{table}" TO "{workers}"')
    return said
