"""The bench: gauge studies, bench sums of a job, and part kinds of the shop's own."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op
from sqlalchemy.dialects import sqlite

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None

REAL: sa.types.TypeEngine[float] = sa.Double().with_variant(sqlite.REAL(), "sqlite")


def upgrade() -> None:
    op.add_column('instrument', sa.Column('repeatability', REAL, nullable=True))
    op.create_table('own_kind',
    sa.Column('kind', sa.Text(), nullable=False),
    sa.Column('body', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_own_kind')),
    sa.UniqueConstraint('kind', name=op.f('uq_own_kind_kind')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_table('gauge_study',
    sa.Column('instrument_id', sa.Integer(), nullable=False),
    sa.Column('about', sa.Text(), nullable=False),
    sa.Column('begun_at', sa.Text(), nullable=False),
    sa.Column('taken_over', sa.Integer(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.ForeignKeyConstraint(['instrument_id'], ['instrument.id'], name=op.f('fk_gauge_study_instrument_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_gauge_study')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index(op.f('ix_gauge_study_instrument_id'), 'gauge_study', ['instrument_id'], unique=False)
    op.create_table('gauge_reading',
    sa.Column('study_id', sa.Integer(), nullable=False),
    sa.Column('person', sa.Text(), nullable=False),
    sa.Column('part', sa.Integer(), nullable=False),
    sa.Column('trial', sa.Integer(), nullable=False),
    sa.Column('value', REAL, nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.ForeignKeyConstraint(['study_id'], ['gauge_study.id'], name=op.f('fk_gauge_reading_study_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_gauge_reading')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index('uq_gauge_reading', 'gauge_reading', ['study_id', 'person', 'part', 'trial'], unique=True)
    op.create_table('kept_sum',
    sa.Column('job_id', sa.Integer(), nullable=False),
    sa.Column('sum', sa.Text(), nullable=False),
    sa.Column('inputs', sa.Text(), nullable=False),
    sa.Column('sentence', sa.Text(), nullable=False),
    sa.Column('on_sheet', sa.Integer(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.ForeignKeyConstraint(['job_id'], ['job.id'], name=op.f('fk_kept_sum_job_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_kept_sum')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index(op.f('ix_kept_sum_job_id'), 'kept_sum', ['job_id'], unique=False)
