/** Pa absolute. Common practice, no source: a circuit at rest, open above the cooler. */
export const USUAL_WATER_PRESSURE = 200_000;
