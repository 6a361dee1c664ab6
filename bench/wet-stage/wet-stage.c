/*
 * The wet stage of one piece as ordinary differential equations, solved by CVODE (variable-order BDF, banded Newton).
 *
 * Unknowns, interleaved: T_i [degC] and M_i [kg water/kg protein] of n cells, centre first.
 *   C_i(M_i) dT_i/dt = G_i-1 (T_i-1 - T_i) + G_i (T_i+1 - T_i), the last cell with the surface
 *   dM_i/dt = -k_d(T_i) max(M_i - M_eq(T_i), 0)
 * The surface temperature T_s balances heat from air and wall, evaporation from a full film, and the last cell; it is
 * found by Newton at every call. The film never runs dry, so the drying front does not move.
 *
 * Input on stdin: see wet-stage.ts, which writes it. Output on stdout: for each relative tolerance one line
 *   rtol seconds-per-run steps rhs-calls T_core(t_1) .. T_core(t_m)
 */
#include <cvode/cvode.h>
#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <sundials/sundials_context.h>
#include <sunlinsol/sunlinsol_band.h>
#include <sunmatrix/sunmatrix_band.h>
#include <time.h>

#define MAX_CELLS 128
#define GAS_CONSTANT 8.314462618
#define STEFAN_BOLTZMANN 5.670374419e-8

typedef struct {
  int cells, samples, repeats;
  double thickness[MAX_CELLS], face[MAX_CELLS + 1], protein[MAX_CELLS];
  double water, prot, fat, ash, solids_capacity;
  double start, raw_moisture, final_moisture, mid, width, rate80, held0;
  double gas, wall, humidity, convection, pressure, emissivity, evaporating_share, activity;
  double end;
  double surface;
} Problem;

static double rho_water(double t) { return 997.18 + 3.1439e-3 * t - 3.7574e-3 * t * t; }
static double rho_protein(double t) { return 1329.9 - 0.5184 * t; }
static double rho_fat(double t) { return 925.59 - 0.41757 * t; }
static double rho_ash(double t) { return 2423.8 - 0.28063 * t; }
static double k_water(double t) { return 0.57109 + 1.7625e-3 * t - 6.7036e-6 * t * t; }
static double k_protein(double t) { return 0.17881 + 1.1958e-3 * t - 2.7178e-6 * t * t; }
static double k_fat(double t) { return 0.18071 - 2.7604e-4 * t - 1.7749e-7 * t * t; }
static double k_ash(double t) { return 0.32962 + 1.4011e-3 * t - 2.9069e-6 * t * t; }

static double conductivity(const Problem *p, double t, double m) {
  double v = m / rho_water(t), k = v * k_water(t), part;
  part = 1 / rho_protein(t);
  v += part, k += part * k_protein(t);
  part = p->fat / p->prot / rho_fat(t);
  v += part, k += part * k_fat(t);
  part = p->ash / p->prot / rho_ash(t);
  v += part, k += part * k_ash(t);
  return 0.95 * k / v;
}

static double saturation_pa(double t) {
  double k = t + 273.15;
  return exp(-5800.2206 / k + 1.3914993 - 0.048640239 * k + 4.1764768e-5 * k * k - 1.4452093e-8 * k * k * k +
             6.5459673 * log(k));
}

static double held(const Problem *p, double t) { return 1 / (1 + exp(-(t - p->mid) / p->width)); }

/* Surface temperature where the balance closes, and the conductance-weighted flow into the last cell. */
static double into_meat(Problem *p, double to_surface, double last) {
  double per_mass = 1030 / (p->convection * 1.1144254);
  double ambient = -log(1 + p->humidity);
  double ts = p->surface;
  for (int i = 0; i < 30; i++) {
    double mean = 0.5 * (ts + p->wall) + 273.15;
    double hr = 4 * STEFAN_BOLTZMANN * p->emissivity * mean * mean * mean, dhr = 1.5 * hr / mean;
    double supply = p->convection * (p->gas - ts) + hr * (p->wall - ts);
    double d_supply = dhr * (p->wall - ts) - p->convection - hr;
    double ps = p->activity * saturation_pa(ts);
    double k = ts + 273.15;
    double slope = ps * (5800.2206 / (k * k) - 0.048640239 + 2 * 4.1764768e-5 * k - 3 * 1.4452093e-8 * k * k + 6.5459673 / k);
    double dry = p->pressure - ps, mixed = p->pressure - 0.378 * ps;
    double potential = (ambient + log(mixed / dry)) / per_mass;
    double d_potential = slope * (1 / dry - 0.378 / mixed) / per_mass;
    double share = potential > 0 ? p->evaporating_share : 1;
    double latent = 2.501e6 - 2361 * ts;
    double r = supply - latent * share * potential - to_surface * (ts - last);
    double dr = d_supply + 2361 * share * potential - latent * share * d_potential - to_surface;
    double d = -r / dr;
    d = d > 12 ? 12 : d < -12 ? -12 : d;
    ts += d;
    if (fabs(d) < 1e-10) break;
  }
  p->surface = ts;
  return to_surface * (ts - last);
}

static int rates(realtype t, N_Vector y, N_Vector ydot, void *data) {
  (void)t;
  Problem *p = data;
  const realtype *s = N_VGetArrayPointer(y);
  realtype *d = N_VGetArrayPointer(ydot);
  int n = p->cells;
  double k[MAX_CELLS], flow[MAX_CELLS + 1];
  for (int i = 0; i < n; i++) k[i] = conductivity(p, s[2 * i], s[2 * i + 1]);
  flow[0] = 0;
  for (int i = 1; i < n; i++)
    flow[i] = 2 * p->face[i] / (p->thickness[i - 1] / k[i - 1] + p->thickness[i] / k[i]) * (s[2 * i] - s[2 * i - 2]);
  flow[n] = into_meat(p, 2 * p->face[n] * k[n - 1] / p->thickness[n - 1], s[2 * n - 2]);
  double span = (p->raw_moisture - p->final_moisture) / (1 - p->held0);
  for (int i = 0; i < n; i++) {
    double temperature = s[2 * i], moisture = s[2 * i + 1];
    d[2 * i] = (flow[i + 1] - flow[i]) / (p->protein[i] * (p->solids_capacity + 4186 * moisture));
    double equilibrium = p->raw_moisture - span * (held(p, temperature) - p->held0);
    double excess = moisture > equilibrium ? moisture - equilibrium : 0;
    d[2 * i + 1] =
        -p->rate80 * exp(-60e3 / GAS_CONSTANT * (1 / (temperature + 273.15) - 1 / 353.15)) * excess;
  }
  return 0;
}

static double seconds(void) {
  struct timespec now;
  clock_gettime(CLOCK_MONOTONIC, &now);
  return now.tv_sec + 1e-9 * now.tv_nsec;
}

static double read_number(void) {
  double x;
  if (scanf("%lf", &x) != 1) exit(2);
  return x;
}

int main(void) {
  static Problem p;
  static double cores[1000];
  p.cells = (int)read_number(), p.samples = (int)read_number(), p.repeats = (int)read_number();
  double *scalars[] = {&p.prot, &p.fat, &p.ash, &p.solids_capacity, &p.start, &p.raw_moisture, &p.final_moisture,
                       &p.mid, &p.width, &p.rate80, &p.gas, &p.wall, &p.humidity, &p.convection, &p.pressure,
                       &p.emissivity, &p.evaporating_share, &p.activity, &p.end};
  for (unsigned i = 0; i < sizeof scalars / sizeof *scalars; i++) *scalars[i] = read_number();
  for (int i = 0; i < p.cells; i++) p.thickness[i] = read_number();
  for (int i = 0; i <= p.cells; i++) p.face[i] = read_number();
  for (int i = 0; i < p.cells; i++) p.protein[i] = read_number();
  p.held0 = held(&p, p.start);

  SUNContext context;
  SUNContext_Create(NULL, &context);
  N_Vector y = N_VNew_Serial(2 * p.cells, context);
  SUNMatrix jacobian = SUNBandMatrix(2 * p.cells, 3, 3, context);
  SUNLinearSolver linear = SUNLinSol_Band(y, jacobian, context);
  void *solver = CVodeCreate(CV_BDF, context);

  double tolerance;
  int is_first = 1;
  while (scanf("%lf", &tolerance) == 1) {
    long steps = 0, calls = 0;
    int repeats = tolerance < 1e-9 ? 1 : p.repeats;
    double began = seconds();
    for (int repeat = 0; repeat < repeats; repeat++) {
      for (int i = 0; i < p.cells; i++)
        NV_Ith_S(y, 2 * i) = p.start, NV_Ith_S(y, 2 * i + 1) = p.raw_moisture;
      p.surface = p.start;
      if (is_first) {
        CVodeInit(solver, rates, 0, y);
        CVodeSetUserData(solver, &p);
        CVodeSetMaxNumSteps(solver, 1000000);
        is_first = 0;
      } else
        CVodeReInit(solver, 0, y);
      CVodeSStolerances(solver, tolerance, tolerance);
      CVodeSetLinearSolver(solver, linear, jacobian);
      for (int m = 1; m <= p.samples; m++) {
        realtype reached;
        if (CVode(solver, p.end * m / p.samples, y, &reached, CV_NORMAL) < 0) return 3;
        cores[m - 1] = NV_Ith_S(y, 0);
      }
    }
    double took = (seconds() - began) / repeats;
    CVodeGetNumSteps(solver, &steps);
    CVodeGetNumRhsEvals(solver, &calls);
    printf("%.3e %.9e %ld %ld", tolerance, took, steps, calls);
    for (int m = 0; m < p.samples; m++) printf(" %.12f", cores[m]);
    printf("\n");
  }
  CVodeFree(&solver);
  SUNLinSolFree(linear);
  SUNMatDestroy(jacobian);
  N_VDestroy(y);
  SUNContext_Free(&context);
  return 0;
}
