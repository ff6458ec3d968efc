"""The cars of the written jobs, known by class and decade; plates, people and VINs are invented."""

from __future__ import annotations

from demo_shop.job_story import CarEvent, CarStory

CARS = (
    CarStory("compact-1", "1.8-litre compact hatchback, 1990s", "TH 1042", 1994, "Ms Fennimore"),
    CarStory("estate", "2.2-litre estate, 1990s", "TH 1077", 1996, "Mr Quillan"),
    CarStory("saloon-3", "2.0-litre saloon, 2000s", "TH 1103", 2003, "Ms Aldous"),
    CarStory("van-14", "1.6-litre van, fleet unit 14", "TH 1114", 2008, "Pebble Lane Bakery"),
    CarStory("suv", "3.0-litre SUV, 2010s", "TH 1150", 2012, "Mr Harrow-Finch"),
    CarStory("hatch-6", "1.4-litre hatchback, 2010s", "TH 1166", 2014, "Ms Ottoline"),
    CarStory("pickup-7", "2.5-litre pickup, 2000s", "TH 1171", 2004, "Mr Bramwell-Oke"),
    CarStory("saloon-8", "2.4-litre saloon, 2000s", "TH 1188", 2006, "Ms Pellew"),
    CarStory("compact-9", "1.8-litre compact hatchback, 1990s", "TH 1193", 1997, "Mr Winterbourne"),
    CarStory("family-van", "2.0-litre family van, 2010s", "TH 1210", 2015, "Ms Carrow"),
    CarStory("saloon-11", "1.6-litre saloon, 2000s", "TH 1225", 2005, "Mr Lindqvist-Moor"),
    CarStory("pickup-12", "3.5-litre pickup, automatic, 2000s", "TH 1236", 2007, "Mr Dunnock"),
    CarStory("city-car", "1.2-litre city car, 2010s", "TH 1249", 2013, "Ms Rosewarne"),
    CarStory("diesel", "1.9-litre diesel estate, 2000s", "TH 1258", 2002, "Mr Sallow", "km"),
    CarStory("saloon-15", "1.5-litre saloon, 1990s", "TH 1262", 1993, "Mr Ebbs", "mi", False),
    CarStory("hybrid", "2.0-litre hybrid crossover, 2010s", "TH 1277", 2018, "Ms Tamsin-Vale"),
    CarStory("coupe", "1.8-litre coupé, 2000s", "TH 1280", 2001, "Mr Gorse"),
    CarStory("hatch-18", "1.6-litre hatchback, 2000s", "TH 1296", 2006, "Ms Lapwing"),
    CarStory("direct-19", "1.6-litre direct-injection saloon, 2010s", "TH 1304", 2011, "Mr Yarrow"),
    CarStory("compact-20", "1.8-litre compact hatchback, 1990s", "TH 1318", 1995, "Ms Hesper"),
    CarStory("hatch-now", "1.6-litre hatchback, 1990s", "TH 1325", 1998, "Mr Tolliver-Bay"),
    CarStory("estate-now", "1.6-litre estate, 2010s", "TH 1331", 2016, "Ms Arkwright-Lowe"),
    CarStory("minivan-now", "1.9-litre minivan, 2000s", "TH 1346", 2009, "Mr Corran-Pike"),
)

EVENTS = (
    CarEvent("city-car", "sold", "06-15", "07-20 11:10", "Sold on; the promise goes with the car."),
    CarEvent(
        "diesel",
        "odometer replaced",
        "06-10",
        "07-13 14:10",
        "Instrument cluster replaced by another shop; nobody wrote down the old reading.",
    ),
)
