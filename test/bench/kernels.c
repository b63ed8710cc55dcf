/*
 * The peer in C: the same algorithms as the model's kernels, with libm. Reads a line "kernel pieces …", does it, and
 * answers "seconds pieces value": CPU time, how many, and the sum of what was found, to compare.
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#define MOST 70000
static const double REFERENCE = 10e3, G = 9.80665, PI = 3.14159265358979323846;
static const double GOLD[3] = {0.6180339887498949, 0.7548776662466927, 0.5698402909980532};

static double now(void) {
  struct timespec t;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
  return t.tv_sec + 1e-9 * t.tv_nsec;
}

/* Numbers between 0 and 1 that fill the interval evenly, the same in every tongue. */
static double even(int i, int kind) { return fmod(i * GOLD[kind], 1); }

static double loads[MOST], softness[MOST], exponents[MOST], masses[MOST], found[MOST];

static double sum(int n) {
  double s = 0;
  for (int i = 0; i < n; i++) s += found[i];
  return s;
}

/* W = 2 L C_n p_r (z/s)^n sqrt(2Rz), C_n = B(1/2, n + 1)/2, n another in each */
static void power(int n, double R, double L) {
  double constant = log(L * REFERENCE * sqrt(PI * 2 * R));
  for (int i = 0; i < n; i++) {
    double e = exponents[i], lnC = lgamma(e + 1) - lgamma(e + 1.5);
    found[i] = exp((log(loads[i]) - constant - lnC + e * log(softness[i])) / (e + 0.5));
  }
}

/* 1 − atan(y)/y from y² */
static double atan_loss(double x) {
  if (x > 0.02) { double y = sqrt(x); return 1 - atan(y) / y; }
  return x * (1. / 3 - x * (1. / 5 - x * (1. / 7 - x * (1. / 9 - x * (1. / 11 - x * (1. / 13 - x * (1. / 15 - x / 17)))))));
}

typedef struct { double k, H; } Stiffening;

static Stiffening stiffening_of(double s, double H) { Stiffening law = {REFERENCE * (1 - s / H) / s, H}; return law; }

/* one side of a whole arc, and its slope against the sinkage */
static void side(Stiffening law, double R, double z, double *load, double *slope) {
  double a = sqrt(2 * R * z), rest = 1 - z / law.H, rise = a * a / (2 * R * law.H), loss = atan_loss(rise / rest);
  *load = law.k * law.H * a * (z / law.H - loss) / rest;
  *slope = law.k * a * ((1 - loss) / rest + 1 / (rest + rise)) / (2 * rest);
}

/* Newton in logarithms, each from the one before along its slope, ended along the tangent */
static void column(Stiffening law, double R, double share, const double *asked, int n, double start, double *out) {
  double deepest = log(0.99 * law.H), ln_share = log(share), x = start, give = 0, before = 0;
  for (int i = 0; i < n; i++) {
    double ln_load = log(asked[i]) - ln_share;
    x = fmin(x + (ln_load - before) * give, deepest);
    before = ln_load;
    out[i] = INFINITY;
    for (int turn = 0; turn < 60; turn++) {
      double z = exp(x), load, slope;
      side(law, R, z, &load, &slope);
      double miss = log(load) - ln_load;
      give = load / (slope * z);
      if (miss < -1e-6 && x == deepest) break;
      x += fmin(fmax(-miss * give, -4), 4);
      if (fabs(miss) <= 1e-6) { out[i] = exp(x); break; }
      x = fmin(x, deepest);
    }
  }
}

typedef struct { double B, c, bench, Rf, Rr, Lf, Lr, rear_mass, body, at, height; } Unit;

static double loss_of(double sine) { return sine * sine / (1 + sqrt(1 - sine * sine)); }

static double sine_of(double deeper, double B, double rise) {
  double sine = deeper / B;
  for (int turn = 0; turn < 30; turn++) {
    double next = (deeper - rise * loss_of(sine)) / B, moved = fabs(next - sine);
    sine = next;
    if (moved <= 1e-15) break;
  }
  return sine;
}

/* both rollers and the lean together, Newton in (ln z_f, ln z_r); the height of the edge */
static double settle(const Unit *u, double mass, Stiffening law, double ln_front, double ln_rear) {
  double total = (mass + u->rear_mass + u->body) * G, rise = u->Rr - u->Rf;
  double along = (u->rear_mass * u->B + u->body * u->at) * G, above = (u->rear_mass * rise + u->body * (u->height - u->Rf)) * G;
  int done = 0;
  for (int turn = 0; turn < 30 && !done; turn++) {
    double f = exp(ln_front), r = exp(ln_rear), fl, fs, rl, rs;
    side(law, u->Rf, f, &fl, &fs); side(law, u->Rr, r, &rl, &rs);
    fl *= 2 * u->Lf; fs *= 2 * u->Lf; rl *= 2 * u->Lr; rs *= 2 * u->Lr;
    double sine = sine_of(r - f, u->B, rise), cosine = 1 - loss_of(sine), arm = u->B * cosine + rise * sine;
    double on_rear = (along * cosine + above * sine) / arm, on_front = total - on_rear;
    double shift = (above * cosine - along * sine - on_rear * (rise * cosine - u->B * sine)) / (arm * arm);
    double miss_f = log(fl / on_front), miss_r = log(rl / on_rear);
    double a = fs * f / fl - shift * f / on_front, b = shift * r / on_front;
    double c = shift * f / on_rear, d = rs * r / rl - shift * r / on_rear, det = a * d - b * c;
    double step_f = (b * miss_r - d * miss_f) / det, step_r = (c * miss_f - a * miss_r) / det;
    done = fabs(miss_f) + fabs(miss_r) <= 2e-5;
    double damp = fmin(1, 1.5 / fmax(fabs(step_f), fabs(step_r)));
    ln_front += damp * step_f; ln_rear += damp * step_r;
  }
  double f = exp(ln_front), sine = sine_of(exp(ln_rear) - f, u->B, rise);
  return u->bench - f - u->c * sine - (u->bench - u->Rf) * loss_of(sine);
}

int main(void) {
  static const double R = 0.029, L = 0.55, H = 6e-3;
  static const Unit unit = {0.19, 0.105, 3.4e-3, 0.029, 0.0255, 0.55, 0.55, 4.3, 18.3, 0.09, 0.07};
  for (int i = 0; i < MOST; i++) {
    loads[i] = 100 * (1 + 9 * even(i, 0));
    softness[i] = 0.2e-3 + 1e-3 * even(i, 1);
    exponents[i] = 0.4 + 0.8 * even(i, 2);
    masses[i] = 4 + 2 * even(i, 0);
  }
  char kernel[32];
  int n;
  while (scanf("%31s %d", kernel, &n) == 2) {
    if (n > MOST) return 2;
    double before = now(), value;
    int pieces = n;
    if (!strcmp(kernel, "power")) { power(n, R, L); value = sum(n); }
    else if (!strcmp(kernel, "stiffening")) {
      /* the pieces in columns of 256 loads that rise evenly */
      static double rising[256];
      for (int i = 0; i < 256; i++) rising[i] = 100 + 900 * i / 255.;
      before = now();
      value = 0;
      for (int i = 0; i + 256 <= n; i += 256) {
        column(stiffening_of(0.2e-3 + 1e-3 * even(i / 256, 1), H), R, 2 * L, rising, 256, log(1e-3), found + i);
      }
      value = sum(n);
    } else if (!strcmp(kernel, "settle")) {
      for (int i = 0; i < n; i++) found[i] = settle(&unit, masses[i], stiffening_of(0.4e-3 + 0.4e-3 * even(i, 1), H), log(1e-3), log(1e-3));
      value = sum(n);
    } else if (!strcmp(kernel, "map")) {
      /* n rows of n masses */
      static double row[1024];
      double all = 0;
      for (int j = 0; j < n; j++) row[j] = 60 + (2 + 8. * j / (n - 1)) * G;
      for (int i = 0; i < n; i++) {
        column(stiffening_of(exp(log(0.04e-3) + (log(2e-3) - log(0.04e-3)) * i / (n - 1)), H), R, 2 * L, row, n, log(1e-3), found);
        all += sum(n);
      }
      value = all;
      pieces = n * n;
    } else return 2;
    printf("%.9g %d %.17g\n", now() - before, pieces, value);
    fflush(stdout);
  }
  return 0;
}
