"""Where the sun stands: the US NOAA Global Monitoring Laboratory's "General Solar Position Calculations"."""

import math


def sun_position(longitude, latitude, when):
    """(azimuth, elevation) of the sun in degrees; azimuth clockwise from true north.

    longitude, latitude: degrees, east and north positive. when: a datetime in UTC. Formulae of the NOAA
    paper (Fourier series for the equation of time and the declination), good to about half a degree;
    refraction is left out.
    """
    day = when.timetuple().tm_yday
    hour = when.hour + when.minute / 60 + when.second / 3600
    days = 366 if when.year % 4 == 0 and (when.year % 100 or when.year % 400 == 0) else 365
    g = 2 * math.pi / days * (day - 1 + (hour - 12) / 24)
    minutes = 229.18 * (
        0.000075
        + 0.001868 * math.cos(g)
        - 0.032077 * math.sin(g)
        - 0.014615 * math.cos(2 * g)
        - 0.040849 * math.sin(2 * g)
    )
    declination = (
        0.006918
        - 0.399912 * math.cos(g)
        + 0.070257 * math.sin(g)
        - 0.006758 * math.cos(2 * g)
        + 0.000907 * math.sin(2 * g)
        - 0.002697 * math.cos(3 * g)
        + 0.00148 * math.sin(3 * g)
    )
    true_minutes = hour * 60 + minutes + 4 * longitude
    angle = math.radians(true_minutes / 4 - 180)
    lat = math.radians(latitude)
    up = math.sin(lat) * math.sin(declination) + math.cos(lat) * math.cos(declination) * math.cos(angle)
    east = -math.cos(declination) * math.sin(angle)
    north = math.cos(lat) * math.sin(declination) - math.sin(lat) * math.cos(declination) * math.cos(angle)
    return math.degrees(math.atan2(east, north)) % 360, math.degrees(math.asin(up))
