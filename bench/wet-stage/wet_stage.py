"""The wet stage of wet-stage.c given to SciPy's BDF; same input on stdin, same output lines."""
import sys
import time
import warnings

import numpy as np
from scipy.integrate import solve_ivp

R = 8.314462618
SIGMA = 5.670374419e-8

lines = sys.stdin.read().split()
take = iter(float(x) for x in lines)
cells, samples, _repeats = int(next(take)), int(next(take)), int(next(take))
(prot, fat, ash, solids, start, raw, final, mid, width, rate80, gas, wall, humidity, convection, pressure,
 emissivity, share_open, activity, end) = (next(take) for _ in range(19))
thickness = np.array([next(take) for _ in range(cells)])
face = np.array([next(take) for _ in range(cells + 1)])
protein = np.array([next(take) for _ in range(cells)])
tolerances = list(take)


def held(t):
    return 1 / (1 + np.exp(-(t - mid) / width))


def conductivity(t, m):
    v = m / (997.18 + 3.1439e-3 * t - 3.7574e-3 * t * t)
    k = v * (0.57109 + 1.7625e-3 * t - 6.7036e-6 * t * t)
    for amount, rho, cond in (
        (1, 1329.9 - 0.5184 * t, 0.17881 + 1.1958e-3 * t - 2.7178e-6 * t * t),
        (fat / prot, 925.59 - 0.41757 * t, 0.18071 - 2.7604e-4 * t - 1.7749e-7 * t * t),
        (ash / prot, 2423.8 - 0.28063 * t, 0.32962 + 1.4011e-3 * t - 2.9069e-6 * t * t),
    ):
        v = v + amount / rho
        k = k + amount / rho * cond
    return 0.95 * k / v


surface = [start]


def into_meat(to_surface, last):
    per_mass = 1030 / (convection * 1.1144254)
    ambient = -np.log(1 + humidity)
    ts = surface[0]
    for _ in range(30):
        mean = 0.5 * (ts + wall) + 273.15
        hr = 4 * SIGMA * emissivity * mean**3
        supply = convection * (gas - ts) + hr * (wall - ts)
        d_supply = 1.5 * hr / mean * (wall - ts) - convection - hr
        k = ts + 273.15
        ps = activity * np.exp(-5800.2206 / k + 1.3914993 - 0.048640239 * k + 4.1764768e-5 * k * k
                               - 1.4452093e-8 * k**3 + 6.5459673 * np.log(k))
        slope = ps * (5800.2206 / (k * k) - 0.048640239 + 2 * 4.1764768e-5 * k - 3 * 1.4452093e-8 * k * k + 6.5459673 / k)
        dry, mixed = pressure - ps, pressure - 0.378 * ps
        potential = (ambient + np.log(mixed / dry)) / per_mass
        d_potential = slope * (1 / dry - 0.378 / mixed) / per_mass
        share = share_open if potential > 0 else 1
        latent = 2.501e6 - 2361 * ts
        r = supply - latent * share * potential - to_surface * (ts - last)
        dr = d_supply + 2361 * share * potential - latent * share * d_potential - to_surface
        step = max(-12, min(12, -r / dr))
        ts += step
        if abs(step) < 1e-10:
            break
    surface[0] = ts
    return to_surface * (ts - last)


held0 = held(start)
span = (raw - final) / (1 - held0)


def rates(_t, y):
    t, m = y[0::2], y[1::2]
    k = conductivity(t, m)
    flow = np.zeros(cells + 1)
    flow[1:-1] = 2 * face[1:-1] / (thickness[:-1] / k[:-1] + thickness[1:] / k[1:]) * np.diff(t)
    flow[-1] = into_meat(2 * face[-1] * k[-1] / thickness[-1], t[-1])
    out = np.empty_like(y)
    out[0::2] = np.diff(flow) / (protein * (solids + 4186 * m))
    excess = np.maximum(m - (raw - span * (held(t) - held0)), 0)
    out[1::2] = -rate80 * np.exp(-60e3 / R * (1 / (t + 273.15) - 1 / 353.15)) * excess
    return out


warnings.filterwarnings("ignore")
for tolerance in tolerances:
    y0 = np.empty(2 * cells)
    y0[0::2], y0[1::2] = start, raw
    surface[0] = start
    began = time.perf_counter()
    answer = solve_ivp(rates, (0, end), y0, method="BDF", rtol=tolerance, atol=tolerance,
                       t_eval=[end * (i + 1) / samples for i in range(samples)], lband=3, uband=3)
    took = time.perf_counter() - began
    print(f"{tolerance:.3e} {took:.9e} {answer.nfev} {answer.nfev}", *(f"{x:.12f}" for x in answer.y[0]))
