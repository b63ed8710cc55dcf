/** What a map shows. Sinkage and pressure are the front roller's. */
export const mapQuantities = ['sinkage', 'drop', 'effectiveHeight', 'peakPressure'] as const

export type MapQuantity = (typeof mapQuantities)[number]
