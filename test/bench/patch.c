/* The full patch in C: what packages/model/src/contact/patch does, step by step, for the stiffening law under a grooved
   roller on a parabola. Reads lines "cells repeats" and answers "seconds pieces load": CPU time and the load of a
   quarter cell [N]. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

typedef struct { int last, keep; double *at, *before, *after, *share; } Axis;
typedef struct { int *below, *on; double *part, *from_before, *from_after; } Between;
typedef struct {
  Axis x, y;
  int rows, width, size, has_next;
  double *west, *east, *south, *north;
  double *springs, *inverse, *held, *change, *rhs, *rest;
  Between along, across;
  double *fine_row, *row;
} Level;
typedef struct { double k, H, G, R, z, depth; } Question;
typedef struct { Axis x, y; double *u, load, imbalance; int cycles; } Mat;

/* All memory comes from one pool, used again for every repeat. */
#define POOL ((size_t)256 << 20)
static char *pool;
static size_t taken;
static void *room(size_t bytes) {
  char *at = pool + taken;
  taken += (bytes + 63) & ~(size_t)63;
  if (taken > POOL) exit(3);
  return memset(at, 0, bytes);
}
static double *field(int n) { return room((size_t)n * sizeof(double)); }
static int *numbers(int n) { return room((size_t)n * sizeof(int)); }

static double pressure(const Question *q, double u) { return q->k * u / (1 - u / q->H); }
static double slope_at(const Question *q, double u) { double t = 1 - u / q->H; return q->k / (t * t); }
static double work(const Question *q, double u) { double x = u / q->H; return q->k * q->H * q->H * (-x - log1p(-x)); }

static Axis axis_of(double *at, int last, int keep) {
  Axis a = {last, keep, at, field(last + 1), field(last + 1), field(last + 1)};
  for (int i = 1; i <= last; i++) {
    double h = at[i] - at[i - 1];
    a.before[i] = 1 / h; a.after[i - 1] = 1 / h; a.share[i] += h / 2; a.share[i - 1] += h / 2;
  }
  return a;
}

static Axis kneed(double knee, int first, double end, int second) {
  double *at = field(first + second + 1);
  for (int i = 1; i < first; i++) at[i] = knee * i / first;
  for (int i = 0; i <= second; i++) at[first + i] = knee + (end - knee) * i / second;
  return axis_of(at, first + second, first);
}

static int coarser(const Axis *a, int first, int second, Axis *coarse, Between *b) {
  int count = 0, keep = 0, *lines = numbers(a->last + 1);
  for (int i = 0; i < a->keep; i += first ? 2 : 1) lines[count++] = i;
  keep = count;
  for (int i = a->keep; i < a->last; i += second ? 2 : 1) lines[count++] = i;
  lines[count++] = a->last;
  double *at = field(count);
  for (int c = 0; c < count; c++) at[c] = a->at[lines[c]];
  *coarse = axis_of(at, count - 1, keep);
  b->below = numbers(a->last + 1);
  b->on = lines; b->part = field(a->last + 1); b->from_before = field(count); b->from_after = field(count);
  for (int i = 0, c = 0; i <= a->last; i++) {
    if (c + 1 < count && i == lines[c + 1]) c++;
    double t = (a->at[i] - at[c]) * coarse->after[c];
    b->below[i] = c; b->part[i] = t;
    if (t != 0) { b->from_after[c] = 1 - t; b->from_before[c + 1] = t; }
  }
  return count <= a->last;
}

static double cell(const Axis *a, int second) {
  int n = second ? a->last - a->keep : a->keep;
  return n > 1 ? (second ? a->at[a->last] - a->at[a->keep] : a->at[a->keep]) / n : INFINITY;
}

static Level level_of(Axis x, Axis y, double G) {
  Level l; memset(&l, 0, sizeof l);
  l.x = x; l.y = y; l.rows = x.last + 1; l.width = y.last + 1; l.size = (l.rows + 2) * l.width;
  l.west = field(l.rows); l.east = field(l.rows); l.south = field(l.width); l.north = field(l.width);
  for (int i = 0; i < l.rows; i++) { l.west[i] = G * x.before[i]; l.east[i] = G * x.after[i]; }
  for (int j = 0; j < l.width; j++) { l.south[j] = G * y.before[j]; l.north[j] = G * y.after[j]; }
  l.springs = field(l.size); l.inverse = field(l.size); l.held = field(l.size);
  l.change = field(l.size); l.rhs = field(l.size); l.rest = field(l.size);
  return l;
}

static int hierarchy(Axis x, Axis y, double G, Level *levels) {
  int count = 0;
  for (;;) {
    Level *l = &levels[count++];
    *l = level_of(x, y, G);
    double a = cell(&x, 1), b = cell(&y, 0), c = cell(&y, 1), least = fmin(a, fmin(b, c));
    if (least == INFINITY) return count;
    Axis cx, cy;
    coarser(&x, 0, a < 1.5 * least, &cx, &l->along);
    coarser(&y, b < 1.5 * least, c < 1.5 * least, &cy, &l->across);
    l->has_next = 1; l->fine_row = field(l->width + 2); l->row = field(cy.last + 2);
    x = cx; y = cy;
  }
}

static void restrict_to(const Level *f, const Level *c, const double *from, double *to) {
  for (int i = 0; i < c->rows; i++) {
    double before = f->along.from_before[i], after = f->along.from_after[i];
    const double *s = from + (f->along.on[i] + 1) * f->width;
    double *row = f->fine_row + 1, *out = to + (i + 1) * c->width;
    for (int j = 0; j < f->width; j++) row[j] = s[j] + before * s[j - f->width] + after * s[j + f->width];
    for (int d = 0; d < c->width; d++) {
      int j = f->across.on[d];
      out[d] = row[j] + f->across.from_before[d] * row[j - 1] + f->across.from_after[d] * row[j + 1];
    }
  }
}

static void prolong(const Between *along, const Between *across, int rows, int width, int wide, double *row,
                    const double *from, double *to) {
  for (int i = 0; i < rows; i++) {
    double t = along->part[i];
    const double *s = from + (along->below[i] + 1) * wide;
    for (int c = 0; c < wide; c++) row[c] = (1 - t) * s[c] + t * s[c + wide];
    for (int j = 0; j < width; j++) {
      int c = across->below[j];
      to[(i + 1) * width + j] += (1 - across->part[j]) * row[c] + across->part[j] * row[c + 1];
    }
  }
}

static void relax(const Level *l, int colour, double *u, const double *rhs) {
  int width = l->width;
  for (int i = 0; i < l->rows; i++) {
    double w = l->west[i], e = l->east[i], share = l->x.share[i];
    for (int j = (i + colour) & 1; j < width; j += 2) {
      int k = (i + 1) * width + j;
      double per = l->inverse[k];
      if (per == 0) continue;
      u[k] = per * (rhs[k] + l->y.share[j] * (w * u[k - width] + e * u[k + width]) +
                    share * (l->south[j] * u[k - 1] + l->north[j] * u[k + 1]));
    }
  }
}

static void leave_rest(const Level *l, const double *u, const double *rhs, double *rest) {
  int width = l->width;
  for (int i = 0; i < l->rows; i++) {
    double w = l->west[i], e = l->east[i], share = l->x.share[i];
    for (int j = 0; j < width; j++) {
      int k = (i + 1) * width + j;
      double per = l->inverse[k];
      rest[k] = per == 0 ? 0
                         : rhs[k] + l->y.share[j] * (w * u[k - width] + e * u[k + width]) +
                               share * (l->south[j] * u[k - 1] + l->north[j] * u[k + 1]) - u[k] / per;
    }
  }
}

static void cycle(Level *l) {
  memset(l->change, 0, (size_t)l->size * sizeof(double));
  if (!l->has_next) {
    for (int turn = 0; turn < 6; turn++) {
      relax(l, 0, l->change, l->rhs); relax(l, 1, l->change, l->rhs);
      relax(l, 1, l->change, l->rhs); relax(l, 0, l->change, l->rhs);
    }
    return;
  }
  relax(l, 0, l->change, l->rhs); relax(l, 1, l->change, l->rhs);
  leave_rest(l, l->change, l->rhs, l->rest);
  restrict_to(l, l + 1, l->rest, l[1].rhs);
  cycle(l + 1);
  prolong(&l->along, &l->across, l->rows, l->width, l[1].width, l->row, l[1].change, l->change);
  for (int k = 0; k < l->size; k++) if (l->inverse[k] == 0) l->change[k] = 0;
  relax(l, 1, l->change, l->rhs); relax(l, 0, l->change, l->rhs);
}

static void fill(Level *levels, int count) {
  for (int d = 0; d < count; d++) {
    Level *l = &levels[d];
    for (int i = 0; i < l->rows; i++)
      for (int j = 0; j < l->width; j++) {
        int k = (i + 1) * l->width + j;
        double area = l->x.share[i] * l->y.share[j];
        l->inverse[k] = l->held[k] > 0.3 * area ? 0
                                                : 1 / (l->y.share[j] * (l->west[i] + l->east[i]) +
                                                       l->x.share[i] * (l->south[j] + l->north[j]) + l->springs[k]);
      }
    if (!l->has_next) return;
    restrict_to(l, l + 1, l->springs, l[1].springs);
    restrict_to(l, l + 1, l->held, l[1].held);
  }
}

static double dot(const double *a, const double *b, int n) { double s = 0; for (int k = 0; k < n; k++) s += a[k] * b[k]; return s; }

static int gradients(Level *levels, double *direction, double *image, const double *nothing, double *answer) {
  Level *l = &levels[0];
  double enough = 0.04 * dot(l->rhs, l->rhs, l->size), before = 0;
  for (int used = 1; used <= 3; used++) {
    cycle(l);
    double now = dot(l->rhs, l->change, l->size), turn = used == 1 ? 0 : now / before, left = 0;
    if (!(now > 0)) return used;
    for (int k = 0; k < l->size; k++) direction[k] = l->change[k] + turn * direction[k];
    leave_rest(l, direction, nothing, image);
    double step = -now / dot(direction, image, l->size);
    for (int k = 0; k < l->size; k++) {
      answer[k] += step * direction[k]; l->rhs[k] += step * image[k]; left += l->rhs[k] * l->rhs[k];
    }
    if (left <= enough) return used;
    before = now;
  }
  return 3;
}

typedef struct { const Question *q; double *area, *beyond, *fixed, *slope, *about; } Springs;

static void work_out(Springs *s, int k, double u) {
  const Question *q = s->q;
  double tiny = q->z * 1e-9;
  s->about[k] = u;
  if (u == 0) { s->fixed[k] = 0; s->slope[k] = s->area[k] * slope_at(q, 0) + s->beyond[k] * sqrt(2 * q->G * work(q, tiny)) / tiny; return; }
  double p = pressure(q, u), force = s->area[k] * p, steep = s->area[k] * slope_at(q, u);
  if (s->beyond[k] > 0) {
    double pull = sqrt(2 * q->G * work(q, u));
    force += s->beyond[k] * pull;
    if (pull > 0) steep += s->beyond[k] * q->G * p / pull;
  }
  s->fixed[k] = force - steep * u; s->slope[k] = steep;
}

static double balance(Springs *s, int k, double diagonal, double pull, double low, double high) {
  double under = low, over = pull > 0 ? fmin(high, fmin(pull / diagonal, pull / s->area[k] / (s->q->k + pull / s->area[k] / s->q->H))) : 0;
  if (over <= low) return low;
  if (low > 0) { work_out(s, k, low); if ((diagonal + s->slope[k]) * low + s->fixed[k] >= pull) return low; }
  double u = over;
  for (int step = 0; step < 40; step++) {
    work_out(s, k, u);
    double left = (diagonal + s->slope[k]) * u + s->fixed[k] - pull;
    if (left > 0) over = u; else under = u;
    double next = u - left / (diagonal + s->slope[k]);
    if (!(next > under && next < over)) next = (under + over) / 2;
    double move = fabs(next - u);
    u = next;
    if (move <= 1e-4 * u) break;
  }
  work_out(s, k, u);
  return u;
}

static void sweep(const Level *l, Springs *s, const double *obstacle, double deepest, double *u) {
  int width = l->width;
  for (int colour = 0; colour < 2; colour++)
    for (int i = 0; i < l->rows; i++) {
      double w = l->west[i], e = l->east[i], share = l->x.share[i];
      for (int j = (i + colour) & 1; j < width; j += 2) {
        int k = (i + 1) * width + j;
        double wide = l->y.share[j];
        double pull = wide * (w * u[k - width] + e * u[k + width]) + share * (l->south[j] * u[k - 1] + l->north[j] * u[k + 1]);
        double diagonal = wide * (w + e) + share * (l->south[j] + l->north[j]);
        double next = (pull - s->fixed[k]) / (diagonal + s->slope[k]);
        if (s->about[k] == 0 || fabs(next - s->about[k]) > 0.3 * s->about[k]) next = balance(s, k, diagonal, pull, obstacle[k], deepest);
        u[k] = fmin(fmax(next, obstacle[k]), deepest);
      }
    }
}

static void unbalanced(const Level *l, const Springs *s, const double *u, double *rest) {
  int width = l->width;
  for (int i = 0; i < l->rows; i++) {
    double w = l->west[i], e = l->east[i], share = l->x.share[i];
    for (int j = 0; j < width; j++) {
      int k = (i + 1) * width + j;
      double here = u[k];
      rest[k] = l->y.share[j] * (w * (u[k - width] - here) + e * (u[k + width] - here)) +
                share * (l->south[j] * (u[k - 1] - here) + l->north[j] * (u[k + 1] - here)) -
                (here == 0 ? 0 : s->fixed[k] + s->slope[k] * here);
    }
  }
}

static Mat minimise(const Question *q, Axis x, Axis y, double *u, double tolerance) {
  Level levels[40];
  int count = hierarchy(x, y, q->G, levels);
  Level *l = &levels[0];
  int width = l->width, end = (l->rows + 1) * width, size = l->size;
  double *obstacle = field(size), *step = field(size), *pull = field(size), *direction = field(size), *image = field(size), *nothing = field(size);
  Springs s = {q, field(size), field(size), field(size), field(size), field(size)};
  for (int k = 0; k < size; k++) s.about[k] = NAN;
  for (int i = 0; i < l->rows; i++)
    for (int j = 0; j < width; j++) {
      int k = (i + 1) * width + j;
      double h = x.at[i] * x.at[i] / (2 * q->R);
      obstacle[k] = fmax(0, q->z - h - (j <= y.keep ? 0 : q->depth));
      s.area[k] = x.share[i] * y.share[j];
      if (i == l->rows - 1) s.beyond[k] = y.share[j];
      u[k] = fmin(fmax(u[k], obstacle[k]), q->z);
    }
  Mat mat = {x, y, u, 0, 0, 0};
  for (int turns = 0;; turns++) {
    double left = 0, load = 0;
    for (int k = width; k < end; k++) if (!(fabs(u[k] - s.about[k]) <= 1e-4 * u[k])) work_out(&s, k, u[k]);
    unbalanced(l, &s, u, l->rhs);
    for (int k = width; k < end; k++) {
      if (l->rhs[k] > 0 || u[k] > obstacle[k]) left += fabs(l->rhs[k]);
      if (u[k] != 0) load += s.fixed[k] + s.slope[k] * u[k];
    }
    mat.load = load; mat.imbalance = left / load;
    if (left <= tolerance * load || turns == 60) return mat;
    sweep(l, &s, obstacle, q->z, u);
    for (int k = width; k < end; k++) {
      int away = u[k] > obstacle[k];
      l->held[k] = away ? 0 : s.area[k]; l->springs[k] = away ? s.slope[k] : 0;
    }
    fill(levels, count);
    unbalanced(l, &s, u, l->rhs);
    for (int k = width; k < end; k++) if (l->inverse[k] == 0) l->rhs[k] = 0;
    memcpy(pull, l->rhs, (size_t)size * sizeof(double)); memset(step, 0, (size_t)size * sizeof(double));
    mat.cycles += gradients(levels, direction, image, nothing, step);
    int cut = 0;
    double part = 1;
    for (int k = 0; k < size; k++) {
      double to = u[k] + step[k];
      if (to < obstacle[k] || to > q->z) { step[k] = (to < obstacle[k] ? obstacle[k] : q->z) - u[k]; cut = 1; }
    }
    if (cut) { leave_rest(l, step, nothing, image); part = fmin(1, fmax(0, -dot(step, pull, size) / dot(step, image, size))); }
    for (int k = width; k < end; k++) u[k] = fmax(u[k] + part * step[k], obstacle[k]);
  }
}

static Mat nested(const Question *q, Axis x, Axis y, double tolerance) {
  int width = y.last + 1, rows = x.last + 1;
  double *u = field((rows + 2) * width);
  if (rows > 12) {
    Axis cx, cy; Between along, across;
    coarser(&x, 1, 1, &cx, &along); coarser(&y, 1, 1, &cy, &across);
    Mat from = nested(q, cx, cy, 1e-5);
    prolong(&along, &across, rows, width, cy.last + 1, field(cy.last + 2), from.u, u);
  }
  return minimise(q, x, y, u, tolerance);
}

static double now(void) {
  struct timespec t;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
  return t.tv_sec + 1e-9 * t.tv_nsec;
}

int main(void) {
  static const double softness = 0.6e-3, H = 6e-3, spread = 2e-3, R = 0.029, half = 6e-3, land = 2.5e-3, z = 0.9e-3;
  Question q = {10e3 * (1 - softness / H) / softness, H, spread * spread * 10e3 / softness, R, z, 5e-3};
  double local = sqrt(q.G * q.z / pressure(&q, q.z)), decay = 1 / hypot(1 / local, 3.14159265358979323846 / half);
  double part = fmin(fmax(land / half, 0.125), 0.875);
  int cells, repeats;
  pool = malloc(POOL);
  if (!pool) return 3;
  while (scanf("%d %d", &cells, &repeats) == 2) {
    int on_land = (int)floor(cells * part + 0.5);
    double before = now();
    Mat mat;
    for (int turn = 0; turn < repeats; turn++) {
      taken = 0;
      mat = nested(&q, kneed(0, 0, sqrt(2 * R * q.z) + 4 * decay, cells), kneed(land, on_land, half, cells - on_land), 1e-6);
    }
    printf("%.9g %d %.12g\n", now() - before, repeats, mat.load);
    fflush(stdout);
  }
  return 0;
}
