/** What a figure cannot be trusted with, by the names that views give (docs/physics.md §5 and §6). */
export const trust: Readonly<Record<string, string>> = {
  softness:
    'A result is as good as the softness that goes in. It changes with the week, the water and the place: measure it where the unit will work.',
  arc: 'The arc of a roller is taken as a parabola. At a depth of a tenth of its radius that makes the load 1.5 % too high; where it is deeper, a caution says so.',
  grooves:
    'A grooved roller is worked out by a quick model, tried against full solutions. The smaller the spread of the turf against the length of the contact, the nearer it comes: within 0.3 % at best, 5 % before a caution is shown, more beyond it.',
  mat: 'Between two lands the mat is taken to hang at a small slope. Where it is steep at the land, nobody knows how far that is off; a caution says where.',
  mowing: 'While mowing on grooves, in turf with spread, the roller carries 2 to 9 % more than is said here.',
  strain:
    'Where sinkage is a large part of the soft layer, the layer is stiffer than it is taken to be: the load is 2 % too low at 0.04 of its thickness, 5 % at 0.08 and 17 % at 0.24.',
  locking:
    'Near the depth at which the turf locks the answer hangs on that depth, which nobody measures well.',
  contact:
    'The length of the contact is that of a bed of springs. Under a real layer it is anything from 42 % shorter to 3 % longer: a sinkage that agrees with a gauge proves neither the length nor the pressure.',
  exponent:
    'A fitted exponent is no constant of the turf: it moves with the roller, the thickness of the layer and the load.',
  fitted: 'Outside the pressures that were measured the curve is only continued.',
  trial:
    'No replicated trial in millimetres of grooved against smooth rollers was found in print. What is said of them rests on mechanics: it is a way to run such a trial, not a result of one.',
  sliding:
    'How far a roller slides on a turn is geometry, and sure. The friction that goes with it is assumed, not measured, and what sliding does to the turf is not said.',
  injury: 'Nothing here says anything of injury, disease, density or playing quality.',
}
