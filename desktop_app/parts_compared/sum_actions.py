"""Deeds about bench sums: one is kept with its job, printed or not, taken out."""

from __future__ import annotations

import json

from desktop_app.language import tr
from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum
from desktop_app.parts_compared.stored import KeptSum
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord


def keep_sum(record: ShopRecord, job_id: int, sum_id: str, result: BenchSum) -> Done:
    """Keep a sum with its job as it was said; it goes onto the sheet until somebody says no."""
    said = {"name": result.name, "limit": result.limit_sentence, "inputs": result.inputs}

    def work(deed: Deed) -> None:
        deed.add(
            KeptSum,
            job_id=job_id,
            sum=sum_id,
            inputs=json.dumps(said, ensure_ascii=False),
            sentence=result.sentence,
        )

    return record.do(tr("Keep the sum {name}", name=result.name), work)


def print_sum(record: ShopRecord, kept_id: int, on_sheet: bool) -> Done:
    """Say whether a kept sum is printed on the sheet."""
    words = tr("Put the sum on the sheet") if on_sheet else tr("Leave the sum off the sheet")
    return record.do(words, lambda deed: deed.change(KeptSum, kept_id, on_sheet=int(on_sheet)))


def take_sum_out(record: ShopRecord, kept_id: int) -> Done:
    """Take a kept sum out."""
    return record.do(tr("Take the sum out"), lambda deed: deed.remove(KeptSum, kept_id))
