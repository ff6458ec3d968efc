"""The first form of the record: all tables of a shop, and the words of its jobs for searching."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op
from sqlalchemy.dialects import sqlite

from desktop_app.shop_record.migrations.on_a_server import ON_A_SERVER

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None

REAL: sa.types.TypeEngine[float] = sa.Double().with_variant(sqlite.REAL(), "sqlite")

# One row a job, its rowid the job's id. Derived: it can be built anew from the tables at any time.
JOB_TEXT = (
    "CREATE VIRTUAL TABLE job_text USING fts5("
    "concern, cause, correction, conditions, codes, parts, vehicle, people, "
    "tokenize = 'porter unicode61 remove_diacritics 2', prefix = '2 3')"
)


def upgrade() -> None:
    op.create_table('answered',
    sa.Column('about', sa.Text(), nullable=False),
    sa.Column('question', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_answered')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index('ix_answered_about', 'answered', ['about'], unique=False)
    op.create_table('customer',
    sa.Column('name', sa.Text(), nullable=False),
    sa.Column('phone', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_customer')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_table('history',
    sa.Column('seq', sa.Integer(), nullable=False),
    sa.Column('at', sa.Text(), nullable=False),
    sa.Column('who', sa.Text(), nullable=False),
    sa.Column('words', sa.Text(), nullable=False),
    sa.Column('body', sa.Text(), nullable=False),
    sa.Column('reverses', sa.Integer(), nullable=True),
    sa.Column('hash', sa.Text(), nullable=False),
    sa.ForeignKeyConstraint(['reverses'], ['history.seq'], name=op.f('fk_history_reverses')),
    sa.PrimaryKeyConstraint('seq', name=op.f('pk_history')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_table('instrument',
    sa.Column('name', sa.Text(), nullable=False),
    sa.Column('unit', sa.Text(), nullable=False),
    sa.Column('resolution', REAL, nullable=False),
    sa.Column('max_error', REAL, nullable=False),
    sa.Column('checked_on', sa.Text(), nullable=True),
    sa.Column('in_use', sa.Integer(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_instrument')),
    sa.UniqueConstraint('name', name=op.f('uq_instrument_name')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_table('person',
    sa.Column('name', sa.Text(), nullable=False),
    sa.Column('here', sa.Integer(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_person')),
    sa.UniqueConstraint('name', name=op.f('uq_person_name')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_table('setting',
    sa.Column('name', sa.Text(), nullable=False),
    sa.Column('value', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_setting')),
    sa.UniqueConstraint('name', name=op.f('uq_setting_name')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_table('vehicle',
    sa.Column('vin', sa.Text(), nullable=True),
    sa.Column('plate', sa.Text(), nullable=True),
    sa.Column('plate_key', sa.Text(), nullable=True),
    sa.Column('tag', sa.Text(), nullable=True),
    sa.Column('description', sa.Text(), nullable=False),
    sa.Column('odometer_unit', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.CheckConstraint("odometer_unit IN ('mi', 'km')", name=op.f('ck_vehicle_odometer_unit')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_vehicle')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index(op.f('ix_vehicle_plate_key'), 'vehicle', ['plate_key'], unique=False)
    op.create_index(op.f('ix_vehicle_vin'), 'vehicle', ['vin'], unique=False)
    op.create_table('vehicle_event',
    sa.Column('vehicle_id', sa.Integer(), nullable=False),
    sa.Column('kind', sa.Text(), nullable=False),
    sa.Column('happened_on', sa.Text(), nullable=False),
    sa.Column('reading_before', sa.Integer(), nullable=True),
    sa.Column('reading_after', sa.Integer(), nullable=True),
    sa.Column('note', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.CheckConstraint("kind IN ('odometer replaced', 'sold')", name=op.f('ck_vehicle_event_kind')),
    sa.ForeignKeyConstraint(['vehicle_id'], ['vehicle.id'], name=op.f('fk_vehicle_event_vehicle_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_vehicle_event')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index(op.f('ix_vehicle_event_vehicle_id'), 'vehicle_event', ['vehicle_id'], unique=False)
    op.create_table('visit',
    sa.Column('vehicle_id', sa.Integer(), nullable=False),
    sa.Column('customer_id', sa.Integer(), nullable=True),
    sa.Column('came_at', sa.Text(), nullable=False),
    sa.Column('left_at', sa.Text(), nullable=True),
    sa.Column('odometer_in', sa.Integer(), nullable=True),
    sa.Column('odometer_out', sa.Integer(), nullable=True),
    sa.Column('odometer_unread', sa.Text(), nullable=True),
    sa.Column('brought_by', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.ForeignKeyConstraint(['customer_id'], ['customer.id'], name=op.f('fk_visit_customer_id')),
    sa.ForeignKeyConstraint(['vehicle_id'], ['vehicle.id'], name=op.f('fk_visit_vehicle_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_visit')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index(op.f('ix_visit_came_at'), 'visit', ['came_at'], unique=False)
    op.create_index(op.f('ix_visit_customer_id'), 'visit', ['customer_id'], unique=False)
    op.create_index(op.f('ix_visit_vehicle_id'), 'visit', ['vehicle_id'], unique=False)
    op.create_table('job',
    sa.Column('number', sa.Text(), nullable=False),
    sa.Column('visit_id', sa.Integer(), nullable=False),
    sa.Column('concern', sa.Text(), nullable=False),
    sa.Column('says_same', sa.Integer(), nullable=False),
    sa.Column('system', sa.Text(), nullable=False),
    sa.Column('cause_found', sa.Integer(), nullable=True),
    sa.Column('cause', sa.Text(), nullable=False),
    sa.Column('correction', sa.Text(), nullable=False),
    sa.Column('technician_id', sa.Integer(), nullable=True),
    sa.Column('hours', REAL, nullable=True),
    sa.Column('unbilled_hours', REAL, nullable=True),
    sa.Column('price_cents', sa.Integer(), nullable=True),
    sa.Column('proof_level', sa.Integer(), nullable=True),
    sa.Column('proof_words', sa.Text(), nullable=False),
    sa.Column('proof_distance', REAL, nullable=True),
    sa.Column('declined', sa.Text(), nullable=True),
    sa.Column('left_at', sa.Text(), nullable=True),
    sa.Column('odometer_out', sa.Integer(), nullable=True),
    sa.Column('window_days', sa.Integer(), nullable=False),
    sa.Column('window_miles', sa.Integer(), nullable=False),
    sa.Column('window_rule', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.CheckConstraint("window_rule IN ('first', 'both')", name=op.f('ck_job_window_rule')),
    sa.CheckConstraint('proof_level BETWEEN 0 AND 4', name=op.f('ck_job_proof_level')),
    sa.ForeignKeyConstraint(['technician_id'], ['person.id'], name=op.f('fk_job_technician_id')),
    sa.ForeignKeyConstraint(['visit_id'], ['visit.id'], name=op.f('fk_job_visit_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_job')),
    sa.UniqueConstraint('number', name=op.f('uq_job_number')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index('ix_job_left', 'job', ['left_at'], unique=False)
    op.create_index(op.f('ix_job_technician_id'), 'job', ['technician_id'], unique=False)
    op.create_index(op.f('ix_job_visit_id'), 'job', ['visit_id'], unique=False)
    op.create_table('job_check',
    sa.Column('job_id', sa.Integer(), nullable=False),
    sa.Column('kind', sa.Text(), nullable=False),
    sa.Column('words', sa.Text(), nullable=False),
    sa.Column('outcome', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.CheckConstraint("kind IN ('inspection', 'refit', 'proof')", name=op.f('ck_job_check_kind')),
    sa.ForeignKeyConstraint(['job_id'], ['job.id'], name=op.f('fk_job_check_job_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_job_check')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index(op.f('ix_job_check_job_id'), 'job_check', ['job_id'], unique=False)
    op.create_table('job_condition',
    sa.Column('job_id', sa.Integer(), nullable=False),
    sa.Column('condition', sa.Text(), nullable=False),
    sa.Column('happens', sa.Integer(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.ForeignKeyConstraint(['job_id'], ['job.id'], name=op.f('fk_job_condition_job_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_job_condition')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index('uq_job_condition', 'job_condition', ['job_id', 'condition'], unique=True)
    op.create_table('job_symptom',
    sa.Column('job_id', sa.Integer(), nullable=False),
    sa.Column('symptom', sa.Text(), nullable=False),
    sa.Column('chosen', sa.Integer(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.ForeignKeyConstraint(['job_id'], ['job.id'], name=op.f('fk_job_symptom_job_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_job_symptom')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index(op.f('ix_job_symptom_symptom'), 'job_symptom', ['symptom'], unique=False)
    op.create_index('uq_job_symptom', 'job_symptom', ['job_id', 'symptom'], unique=True)
    op.create_table('pair',
    sa.Column('job_id', sa.Integer(), nullable=False),
    sa.Column('part_kind', sa.Text(), nullable=False),
    sa.Column('position', sa.Text(), nullable=False),
    sa.Column('origin', sa.Text(), nullable=True),
    sa.Column('supplier', sa.Text(), nullable=False),
    sa.Column('lot', sa.Text(), nullable=False),
    sa.Column('number_removed', sa.Text(), nullable=False),
    sa.Column('number_on_box', sa.Text(), nullable=False),
    sa.Column('number_on_part', sa.Text(), nullable=False),
    sa.Column('price_cents', sa.Integer(), nullable=True),
    sa.Column('fate', sa.Text(), nullable=False),
    sa.Column('note_removed', sa.Text(), nullable=False),
    sa.Column('note_replacement', sa.Text(), nullable=False),
    sa.Column('fitted', sa.Integer(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.ForeignKeyConstraint(['job_id'], ['job.id'], name=op.f('fk_pair_job_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_pair')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index(op.f('ix_pair_job_id'), 'pair', ['job_id'], unique=False)
    op.create_index(op.f('ix_pair_part_kind'), 'pair', ['part_kind'], unique=False)
    op.create_table('photo',
    sa.Column('job_id', sa.Integer(), nullable=False),
    sa.Column('sha256', sa.Text(), nullable=False),
    sa.Column('name', sa.Text(), nullable=False),
    sa.Column('media_type', sa.Text(), nullable=False),
    sa.Column('size_bytes', sa.Integer(), nullable=False),
    sa.Column('width', sa.Integer(), nullable=False),
    sa.Column('height', sa.Integer(), nullable=False),
    sa.Column('taken_at', sa.Text(), nullable=True),
    sa.Column('note', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.ForeignKeyConstraint(['job_id'], ['job.id'], name=op.f('fk_photo_job_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_photo')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index(op.f('ix_photo_job_id'), 'photo', ['job_id'], unique=False)
    op.create_index(op.f('ix_photo_sha256'), 'photo', ['sha256'], unique=False)
    op.create_table('return_link',
    sa.Column('earlier_job_id', sa.Integer(), nullable=False),
    sa.Column('later_job_id', sa.Integer(), nullable=False),
    sa.Column('judgement', sa.Text(), nullable=True),
    sa.Column('judged_by', sa.Text(), nullable=False),
    sa.Column('judged_at', sa.Text(), nullable=True),
    sa.Column('why', sa.Text(), nullable=False),
    sa.Column('cause_class', sa.Text(), nullable=True),
    sa.Column('cost_cents', sa.Integer(), nullable=True),
    sa.Column('change_promised', sa.Text(), nullable=False),
    sa.Column('same_vehicle', sa.Integer(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.ForeignKeyConstraint(['earlier_job_id'], ['job.id'], name=op.f('fk_return_link_earlier_job_id')),
    sa.ForeignKeyConstraint(['later_job_id'], ['job.id'], name=op.f('fk_return_link_later_job_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_return_link')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index(op.f('ix_return_link_later_job_id'), 'return_link', ['later_job_id'], unique=False)
    op.create_index('uq_return_link', 'return_link', ['earlier_job_id', 'later_job_id'], unique=True)
    op.create_table('trouble_code',
    sa.Column('job_id', sa.Integer(), nullable=False),
    sa.Column('code', sa.Text(), nullable=False),
    sa.Column('kind', sa.Text(), nullable=False),
    sa.Column('stage', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.CheckConstraint("kind IN ('stored', 'pending', 'permanent')", name=op.f('ck_trouble_code_kind')),
    sa.CheckConstraint("stage IN ('found', 'after repair')", name=op.f('ck_trouble_code_stage')),
    sa.ForeignKeyConstraint(['job_id'], ['job.id'], name=op.f('fk_trouble_code_job_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_trouble_code')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index(op.f('ix_trouble_code_code'), 'trouble_code', ['code'], unique=False)
    op.create_index(op.f('ix_trouble_code_job_id'), 'trouble_code', ['job_id'], unique=False)
    op.create_table('explanation',
    sa.Column('pair_id', sa.Integer(), nullable=False),
    sa.Column('dimension', sa.Text(), nullable=False),
    sa.Column('why', sa.Text(), nullable=False),
    sa.Column('by_whom', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.ForeignKeyConstraint(['pair_id'], ['pair.id'], name=op.f('fk_explanation_pair_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_explanation')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index('uq_explanation', 'explanation', ['pair_id', 'dimension'], unique=True)
    op.create_table('maker_limit',
    sa.Column('pair_id', sa.Integer(), nullable=False),
    sa.Column('dimension', sa.Text(), nullable=False),
    sa.Column('low', REAL, nullable=True),
    sa.Column('high', REAL, nullable=True),
    sa.Column('source', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.ForeignKeyConstraint(['pair_id'], ['pair.id'], name=op.f('fk_maker_limit_pair_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_maker_limit')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index('uq_maker_limit', 'maker_limit', ['pair_id', 'dimension'], unique=True)
    op.create_table('mark',
    sa.Column('photo_id', sa.Integer(), nullable=False),
    sa.Column('kind', sa.Text(), nullable=False),
    sa.Column('points', sa.Text(), nullable=False),
    sa.Column('words', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.ForeignKeyConstraint(['photo_id'], ['photo.id'], name=op.f('fk_mark_photo_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_mark')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index(op.f('ix_mark_photo_id'), 'mark', ['photo_id'], unique=False)
    op.create_table('pair_photo',
    sa.Column('pair_id', sa.Integer(), nullable=False),
    sa.Column('photo_id', sa.Integer(), nullable=False),
    sa.Column('side', sa.Text(), nullable=False),
    sa.Column('view', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.CheckConstraint("side IN ('removed', 'replacement')", name=op.f('ck_reading_side')),
    sa.ForeignKeyConstraint(['pair_id'], ['pair.id'], name=op.f('fk_pair_photo_pair_id')),
    sa.ForeignKeyConstraint(['photo_id'], ['photo.id'], name=op.f('fk_pair_photo_photo_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_pair_photo')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index('ix_pair_photo_pair', 'pair_photo', ['pair_id'], unique=False)
    op.create_index(op.f('ix_pair_photo_photo_id'), 'pair_photo', ['photo_id'], unique=False)
    op.create_table('part_condition',
    sa.Column('pair_id', sa.Integer(), nullable=False),
    sa.Column('side', sa.Text(), nullable=False),
    sa.Column('term', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.CheckConstraint("side IN ('removed', 'replacement')", name=op.f('ck_reading_side')),
    sa.ForeignKeyConstraint(['pair_id'], ['pair.id'], name=op.f('fk_part_condition_pair_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_part_condition')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index('uq_part_condition', 'part_condition', ['pair_id', 'side', 'term'], unique=True)
    op.create_table('reading',
    sa.Column('pair_id', sa.Integer(), nullable=False),
    sa.Column('side', sa.Text(), nullable=False),
    sa.Column('dimension', sa.Text(), nullable=False),
    sa.Column('instrument', sa.Text(), nullable=False),
    sa.Column('value', REAL, nullable=True),
    sa.Column('word', sa.Text(), nullable=True),
    sa.Column('typed', sa.Text(), nullable=False),
    sa.Column('taken_at', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.CheckConstraint("side IN ('removed', 'replacement')", name=op.f('ck_reading_side')),
    sa.ForeignKeyConstraint(['pair_id'], ['pair.id'], name=op.f('fk_reading_pair_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_reading')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index('ix_reading_pair', 'reading', ['pair_id', 'dimension', 'side'], unique=False)
    if op.get_bind().dialect.name == "sqlite":
        op.execute(JOB_TEXT)
        op.execute("CREATE VIRTUAL TABLE job_words USING fts5vocab(job_text, 'row')")
    else:
        for said in ON_A_SERVER:
            op.execute(said)
