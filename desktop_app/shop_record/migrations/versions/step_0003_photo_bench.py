"""The photo bench: printed cards, a photo's scale, what a mark said, overlays, photo readings."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op
from sqlalchemy.dialects import sqlite

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None

REAL: sa.types.TypeEngine[float] = sa.Double().with_variant(sqlite.REAL(), "sqlite")


def upgrade() -> None:
    for name, kind in (
        ('height_mm', REAL),
        ('height_u_mm', REAL),
        ('snapped', sa.Text()),
        ('value', REAL),
        ('unit', sa.Text()),
        ('expanded_u', REAL),
        ('budget', sa.Text()),
        ('settings', sa.Text()),
    ):
        op.add_column('mark', sa.Column(name, kind, nullable=True))
    op.create_table('printed_card',
    sa.Column('name', sa.Text(), nullable=False),
    sa.Column('layout', sa.Text(), nullable=False),
    sa.Column('printed_at', sa.Text(), nullable=False),
    sa.Column('measured_mm', REAL, nullable=True),
    sa.Column('measured_on', sa.Text(), nullable=True),
    sa.Column('in_use', sa.Integer(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_printed_card')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_table('photo_scale',
    sa.Column('photo_id', sa.Integer(), nullable=False),
    sa.Column('source', sa.Text(), nullable=False),
    sa.Column('card_id', sa.Integer(), nullable=True),
    sa.Column('card_scale', REAL, nullable=True),
    sa.Column('points', sa.Text(), nullable=True),
    sa.Column('length_mm', REAL, nullable=True),
    sa.Column('length_u_mm', REAL, nullable=True),
    sa.Column('fit', sa.Text(), nullable=False),
    sa.Column('made_by', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.ForeignKeyConstraint(['card_id'], ['printed_card.id'], name=op.f('fk_photo_scale_card_id')),
    sa.ForeignKeyConstraint(['photo_id'], ['photo.id'], name=op.f('fk_photo_scale_photo_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_photo_scale')),
    sa.UniqueConstraint('photo_id', name=op.f('uq_photo_scale_photo_id')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index(op.f('ix_photo_scale_card_id'), 'photo_scale', ['card_id'], unique=False)
    op.create_table('overlay',
    sa.Column('old_photo_id', sa.Integer(), nullable=False),
    sa.Column('new_photo_id', sa.Integer(), nullable=False),
    sa.Column('transform', sa.Text(), nullable=False),
    sa.Column('method', sa.Text(), nullable=False),
    sa.Column('why', sa.Text(), nullable=False),
    sa.Column('residual_px', REAL, nullable=True),
    sa.Column('residual_mm', REAL, nullable=True),
    sa.Column('height_mm', REAL, nullable=True),
    sa.Column('clicks', sa.Text(), nullable=True),
    sa.Column('on_sheet', sa.Integer(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.ForeignKeyConstraint(['new_photo_id'], ['photo.id'], name=op.f('fk_overlay_new_photo_id')),
    sa.ForeignKeyConstraint(['old_photo_id'], ['photo.id'], name=op.f('fk_overlay_old_photo_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_overlay')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index(op.f('ix_overlay_new_photo_id'), 'overlay', ['new_photo_id'], unique=False)
    op.create_index(op.f('ix_overlay_old_photo_id'), 'overlay', ['old_photo_id'], unique=False)
    op.create_index('uq_overlay', 'overlay', ['old_photo_id', 'new_photo_id'], unique=True)
    op.create_table('photo_reading',
    sa.Column('reading_id', sa.Integer(), nullable=False),
    sa.Column('mark_id', sa.Integer(), nullable=False),
    sa.Column('doubt', sa.Text(), nullable=False),
    sa.Column('id', sa.Integer(), nullable=False),
    sa.ForeignKeyConstraint(['mark_id'], ['mark.id'], name=op.f('fk_photo_reading_mark_id')),
    sa.ForeignKeyConstraint(['reading_id'], ['reading.id'], name=op.f('fk_photo_reading_reading_id')),
    sa.PrimaryKeyConstraint('id', name=op.f('pk_photo_reading')),
    sa.UniqueConstraint('reading_id', name=op.f('uq_photo_reading_reading_id')),
    sqlite_autoincrement=True,
    sqlite_strict=True
    )
    op.create_index(op.f('ix_photo_reading_mark_id'), 'photo_reading', ['mark_id'], unique=False)
