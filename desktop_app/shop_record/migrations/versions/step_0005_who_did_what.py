"""Who did what in a job, returns that were only told, danger, and the shop's own phrases."""

from __future__ import annotations

from typing import Any

import sqlalchemy as sa
from alembic import op
from sqlalchemy.dialects import sqlite

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None

REAL: sa.types.TypeEngine[float] = sa.Double().with_variant(sqlite.REAL(), "sqlite")
NEW_COLUMNS: dict[str, tuple[tuple[str, sa.types.TypeEngine[Any]], ...]] = {
    'job': (
        ('work', sa.Text()),
        ('search_hours', REAL),
    ),
    'return_link': (
        ('dangerous', sa.Integer()),
    ),
    'customer_asked': (
        ('source', sa.Text()),
        ('judgement', sa.Text()),
        ('judged_by', sa.Text()),
        ('judged_at', sa.Text()),
        ('why', sa.Text()),
        ('cause_class', sa.Text()),
        ('dangerous', sa.Integer()),
    ),
}


def upgrade() -> None:
    for table, columns in NEW_COLUMNS.items():
        for name, kind in columns:
            op.add_column(table, sa.Column(name, kind, nullable=True))
    op.create_index('ix_job_window_days', 'job', ['window_days'], unique=False)
    op.create_index('ix_job_both_must_end', 'job', ['visit_id'], unique=False,
        sqlite_where=sa.text("window_rule = 'both'"), postgresql_where=sa.text("window_rule = 'both'"))
    op.create_table('job_person',
    sa.Column('job_id', sa.Integer(), nullable=False),
    sa.Column('did', sa.Text(), nullable=False),
    sa.Column('person_id', sa.Integer(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.CheckConstraint("did IN ('wrote up', 'searched', 'refitted', 'proved')", name=op.f('ck_job_person_did')),
    sa.ForeignKeyConstraint(['job_id'], ['job.id'], name=op.f('fk_job_person_job_id')),
    sa.ForeignKeyConstraint(['person_id'], ['person.id'], name=op.f('fk_job_person_person_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_job_person')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index('uq_job_person', 'job_person', ['job_id', 'did'], unique=True)
    op.create_index(op.f('ix_job_person_person_id'), 'job_person', ['person_id'], unique=False)
    op.create_table('own_phrase',
    sa.Column('phrase', sa.Text(), nullable=False),
    sa.Column('symptom', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_own_phrase')),
    sa.UniqueConstraint('phrase', name=op.f('uq_own_phrase_phrase')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
