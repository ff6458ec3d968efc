"""What people say at the counter that means no symptom gives none: a wrong one is worse."""

from __future__ import annotations

import pytest

from desktop_app.symptom_search.vocabulary import Vocabulary

SENTENCES = """
Please check the tyres before our holiday.
Annual service and oil filter.
He will collect it at five after work.
New wiper arms, she brought her own.
Fit the roof rack please, it is in the boot.
The scratch on the left door is from a shopping trolley.
Would like a quote for a new windscreen.
Bought it last month and wants it looked over.
Stop by and drop the key through the door when you are done.
Leave the key with the neighbour.
Do not wash the car.
Please call before you start any work.
Wants the seat covers put back.
Swap winter tyres for the summer ones in storage.
Will wait in the waiting room.
Needs the trailer hitch fitted before Saturday.
Has a loan car until Thursday.
The brake pads were done last year elsewhere.
Check the brake fluid and the coolant level.
Fill up the washer bottle.
Quick look over before a long drive.
The last owner had the engine rebuilt.
The battery was replaced in March.
Wants the timing belt done because of its age.
New key battery.
Set the clock on the radio.
The sharp edge of the bumper cut her hand.
Mother drives it to church and back.
Painting of the front bumper after a knock in the car park.
Wants a second opinion about the clutch price.
Kept in a heated garage all winter.
Turned up without an appointment.
No complaints, runs fine.
No noise, no smoke, pulls well.
Starts first time, every time.
Never had any trouble with it.
The engine is quiet and the brakes are good.
Not in a hurry.
Her son will pick it up, he has the other key.
Please put air in the spare.
Bring the old parts back in a box.
The light switch is hard to find at night.
Asked whether the warranty still runs.
The cable for the phone charger is under the seat.
Reset the service reminder.
It is the blue one at the back.
Wheel alignment after new tie rods.
He heard from a friend that the gearbox oil should be changed.
"""


@pytest.mark.parametrize("said", SENTENCES.strip().splitlines())
def test_no_symptom_is_heard_where_none_was_told(words: Vocabulary, said: str) -> None:
    assert words.groups_in(said) == ()
