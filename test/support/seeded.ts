import fc from 'fast-check'

// Cases are the same in every run: a failure can be looked at again, and no run fails by the luck of the draw.
fc.configureGlobal({ seed: 20_250_311 })
