/**
 * Invented readings of a depth gauge on two round feet. They were drawn, with a scatter of 0.06 mm, from a power law of
 * exponent 0.86 and spread 2.3 mm on two greens of softness 0.52 and 0.86 mm: a test asks the fit of the book for them.
 */
export const gaugeTable = `# Ellerby Hollow Turf School. Everything here is invented: no number was measured.
# Depth gauge on two round feet, read 15 s after setting down; it reads to 0.01 mm.
set,replicate,plate_diameter_mm,load_N,sinkage_mm,moisture_percent,note
mill green,1,30,4,0.36,19,
mill green,2,30,4,0.19,19,
mill green,3,30,4,0.14,19,
mill green,1,30,9,0.49,19,
mill green,2,30,9,0.48,19,
mill green,3,30,9,0.55,19,
mill green,1,30,18,1.03,19,
mill green,2,30,18,1.00,19,
mill green,3,30,18,0.99,19,
mill green,1,30,28,1.87,19,
mill green,2,30,28,1.85,19,
mill green,3,30,28,1.85,19,
mill green,1,80,28,0.20,19,
mill green,2,80,28,0.24,19,
mill green,3,80,28,0.35,19,
mill green,1,80,60,0.51,19,
mill green,2,80,60,NA,19,foot slipped off the cord
mill green,3,80,60,0.61,19,
mill green,1,80,120,1.28,19,
mill green,2,80,120,1.17,19,
mill green,3,80,120,1.32,19,
mill green,1,80,190,2.12,19,
mill green,2,80,190,2.03,19,
mill green,3,80,190,2.17,19,
garden green,1,30,4,0.30,26,
garden green,2,30,4,0.27,26,
garden green,3,30,4,0.40,26,
garden green,1,30,9,0.80,26,
garden green,2,30,9,0.74,26,
garden green,3,30,9,0.90,26,
garden green,1,30,18,1.83,26,wormcast brushed aside
garden green,2,30,18,1.81,26,
garden green,3,30,18,1.83,26,
garden green,1,30,28,2.82,26,
garden green,2,30,28,2.99,26,
garden green,3,30,28,2.95,26,
garden green,1,80,28,0.44,26,
garden green,2,80,28,0.37,26,
garden green,3,80,28,0.42,26,
garden green,1,80,60,0.89,26,
garden green,2,80,60,0.88,26,
garden green,3,80,60,0.97,26,
garden green,1,80,120,2.08,26,
garden green,2,80,120,2.00,26,
garden green,3,80,120,2.01,26,
garden green,1,80,190,3.49,26,
garden green,2,80,190,3.66,26,
garden green,3,80,190,3.49,26,
`

/** Invented heights after a test strip on the same greens, drawn with a scatter of 0.12 mm. */
export const stripTable = `# Ellerby Hollow Turf School. Everything here is invented: no number was measured.
# Heights of the cut grass after a test strip, one row a place.
set,replicate,roller,height_mm,sd_mm
mill green,1,smooth,3.28,0.12
mill green,2,smooth,3.12,0.12
mill green,3,smooth,3.05,0.12
mill green,4,smooth,3.18,0.12
mill green,5,smooth,3.28,0.12
mill green,1,grooved,3.20,0.12
mill green,2,grooved,3.31,0.12
mill green,3,grooved,3.16,0.12
mill green,4,grooved,3.19,0.12
mill green,5,grooved,3.19,0.12
garden green,1,smooth,2.97,0.12
garden green,2,smooth,2.79,0.12
garden green,3,smooth,2.91,0.12
garden green,4,smooth,2.92,0.12
garden green,5,smooth,2.95,0.12
garden green,1,grooved,2.66,0.12
garden green,2,grooved,2.84,0.12
garden green,3,grooved,2.54,0.12
garden green,4,grooved,2.83,0.12
garden green,5,grooved,2.75,0.12
`

/** Published readings, as docs/sandPlates.csv has them; a test compares the two. */
export const sandTable = `# Measured by Kruger, R. (2026), Geotechnical Test Data Repository, doi 10.5281/zenodo.17584462, CC BY 4.0;
# see Kruger, Els and Hamersma (2023), Journal of Terramechanics 109:45-62. Plate of 0.018 m2 on bare sand.
# Sinkage at first crossing of each pressure, read from a thinned copy of the records, so biased low.
set,plate_area_mm2,pressure_kPa,sinkage_mm
M5-1,18000,10,0.61
M5-1,18000,20,0.99
M5-1,18000,40,1.43
M5-1,18000,60,1.70
M5-1,18000,100,2.51
M5-1,18000,200,5.09
M5-1,18000,300,8.12
M4-1,18000,10,0.07
M4-1,18000,20,0.21
M4-1,18000,40,0.73
M4-1,18000,60,1.28
M4-1,18000,100,2.44
M4-1,18000,200,10.18
M4-1,18000,300,25.31
M2-1,18000,10,0.49
M2-1,18000,20,1.01
M2-1,18000,40,1.98
M2-1,18000,60,4.99
M2-1,18000,100,16.86
M2-1,18000,200,42.34
M2-1,18000,300,62.12
M2-2,18000,10,0.36
M2-2,18000,20,0.88
M2-2,18000,40,1.95
M2-2,18000,60,5.94
M2-2,18000,100,18.48
M2-2,18000,200,45.31
M2-2,18000,300,64.49
M2-3,18000,10,0.33
M2-3,18000,20,0.82
M2-3,18000,40,1.89
M2-3,18000,60,3.75
M2-3,18000,100,13.99
M2-3,18000,200,40.35
M2-3,18000,300,60.46
`
