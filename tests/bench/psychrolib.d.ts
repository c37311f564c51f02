declare module "psychrolib" {
  const psychrolib: {
    readonly SI: unknown;
    SetUnitSystem(system: unknown): void;
    /** °C, 0 to 1, Pa. */
    CalcPsychrometricsFromRelHum(
      dryBulb: number,
      relativeHumidity: number,
      pressure: number,
    ): readonly number[];
  };
  export default psychrolib;
}
