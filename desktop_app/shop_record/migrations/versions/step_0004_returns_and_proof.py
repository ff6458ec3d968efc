"""Returns and proof: windows by part kind, the car's own tests, costs and changes of a return."""

from __future__ import annotations

from typing import Any

import sqlalchemy as sa
from alembic import op
from sqlalchemy.dialects import sqlite

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None

REAL: sa.types.TypeEngine[float] = sa.Double().with_variant(sqlite.REAL(), "sqlite")
NEW_COLUMNS: dict[str, tuple[tuple[str, sa.types.TypeEngine[Any]], ...]] = {
    'visit': (
        ('odometer_source', sa.Text()),
    ),
    'job': (
        ('window_months', sa.Integer()),
        ('window_from', sa.Text()),
        ('fault_every', REAL),
        ('fault_every_unit', sa.Text()),
    ),
    'return_link': (
        ('also', sa.Text()),
        ('helping_causes', sa.Text()),
        ('evidence', sa.Text()),
        ('first_view', sa.Text()),
        ('second_look', sa.Text()),
        ('unbilled_hours', REAL),
        ('parts_cents', sa.Integer()),
        ('sublet_cents', sa.Integer()),
        ('tow_cents', sa.Integer()),
        ('loan_car_cents', sa.Integer()),
        ('goodwill_cents', sa.Integer()),
        ('recovered_cents', sa.Integer()),
        ('change_by', sa.Text()),
        ('change_due', sa.Text()),
        ('change_done_on', sa.Text()),
        ('change_check_on', sa.Text()),
    ),
}


def upgrade() -> None:
    for table, columns in NEW_COLUMNS.items():
        for name, kind in columns:
            op.add_column(table, sa.Column(name, kind, nullable=True))
    op.create_table('condition_met',
    sa.Column('job_id', sa.Integer(), nullable=False),
    sa.Column('condition', sa.Text(), nullable=False),
    sa.Column('met', sa.Integer(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.ForeignKeyConstraint(['job_id'], ['job.id'], name=op.f('fk_condition_met_job_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_condition_met')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index('uq_condition_met', 'condition_met', ['job_id', 'condition'], unique=True)
    op.create_table('self_tests',
    sa.Column('job_id', sa.Integer(), nullable=False),
    sa.Column('stage', sa.Text(), nullable=False),
    sa.Column('typed', sa.Text(), nullable=False),
    sa.Column('read_at', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.CheckConstraint("stage IN ('found', 'after repair')", name=op.f('ck_self_tests_stage')),
    sa.ForeignKeyConstraint(['job_id'], ['job.id'], name=op.f('fk_self_tests_job_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_self_tests')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index('uq_self_tests', 'self_tests', ['job_id', 'stage'], unique=True)
    op.create_table('self_test',
    sa.Column('job_id', sa.Integer(), nullable=False),
    sa.Column('stage', sa.Text(), nullable=False),
    sa.Column('monitor', sa.Text(), nullable=False),
    sa.Column('state', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.CheckConstraint("stage IN ('found', 'after repair')", name=op.f('ck_self_test_stage')),
    sa.CheckConstraint("state IN ('complete', 'not run', 'not fitted')", name=op.f('ck_self_test_state')),
    sa.ForeignKeyConstraint(['job_id'], ['job.id'], name=op.f('fk_self_test_job_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_self_test')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index('uq_self_test', 'self_test', ['job_id', 'stage', 'monitor'], unique=True)
    op.create_table('proof_step',
    sa.Column('job_id', sa.Integer(), nullable=False),
    sa.Column('step', sa.Text(), nullable=False),
    sa.Column('done_at', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.ForeignKeyConstraint(['job_id'], ['job.id'], name=op.f('fk_proof_step_job_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_proof_step')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index('uq_proof_step', 'proof_step', ['job_id', 'step'], unique=True)
    op.create_table('caught_here',
    sa.Column('job_id', sa.Integer(), nullable=False),
    sa.Column('caught_at', sa.Text(), nullable=False),
    sa.Column('words', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.ForeignKeyConstraint(['job_id'], ['job.id'], name=op.f('fk_caught_here_job_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_caught_here')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index(op.f('ix_caught_here_job_id'), 'caught_here', ['job_id'], unique=False)
    op.create_table('kind_window',
    sa.Column('part_kind', sa.Text(), nullable=False),
    sa.Column('days', sa.Integer(), nullable=True),
    sa.Column('months', sa.Integer(), nullable=True),
    sa.Column('miles', sa.Integer(), nullable=True),
    sa.Column('rule', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.CheckConstraint("rule IN ('first', 'both')", name=op.f('ck_kind_window_rule')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_kind_window')),
    sa.UniqueConstraint('part_kind', name=op.f('uq_kind_window_part_kind')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_table('customer_asked',
    sa.Column('job_id', sa.Integer(), nullable=False),
    sa.Column('asked_on', sa.Text(), nullable=False),
    sa.Column('answer', sa.Text(), nullable=False),
    sa.Column('odometer_told', sa.Integer(), nullable=True),
    sa.Column('words', sa.Text(), nullable=False),
    sa.Column('asked_by', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.CheckConstraint("answer IN ('fine', 'same trouble', 'other trouble', 'not reached', 'car is gone')", name=op.f('ck_customer_asked_answer')),
    sa.ForeignKeyConstraint(['job_id'], ['job.id'], name=op.f('fk_customer_asked_job_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_customer_asked')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index(op.f('ix_customer_asked_job_id'), 'customer_asked', ['job_id'], unique=False)
    op.create_table('money_owed',
    sa.Column('pair_id', sa.Integer(), nullable=False),
    sa.Column('what', sa.Text(), nullable=False),
    sa.Column('amount_cents', sa.Integer(), nullable=True),
    sa.Column('since', sa.Text(), nullable=False),
    sa.Column('state', sa.Text(), nullable=False),
    sa.Column('next_step', sa.Text(), nullable=False),
    sa.Column('ended_on', sa.Text(), nullable=True),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.CheckConstraint("state IN ('open', 'asked', 'paid', 'refused')", name=op.f('ck_money_owed_state')),
    sa.CheckConstraint("what IN ('core', 'claim')", name=op.f('ck_money_owed_what')),
    sa.ForeignKeyConstraint(['pair_id'], ['pair.id'], name=op.f('fk_money_owed_pair_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_money_owed')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index(op.f('ix_money_owed_pair_id'), 'money_owed', ['pair_id'], unique=False)
