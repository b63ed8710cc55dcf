/** What the map says. */
export type SinkageMapWords = {
  readonly title: string
  /** Axis titles with their units: "mass of front roller, kg", "softness of turf, mm at 10 kPa". */
  readonly massAxis: string
  readonly softnessAxis: string
  readonly firm: string
  readonly soft: string
  /** Over the contours' names: the unit of what they say. */
  readonly contourUnit: string
  /** At the mark: "0.39 mm here". */
  readonly here: (value: string) => string
  /** At the mark where the model has no answer. */
  readonly noAnswer: string
  /** Spoken name and place of the mark. */
  readonly markName: string
  readonly markText: (place: { mass: string; softness: string; value: string | null }) => string
}
