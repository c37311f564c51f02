/** The cooler as it is built, in pixels of its section; x to the right, y down, z away from the eye. */
export interface Frame {
  readonly isWide: boolean;
  readonly width: number;
  readonly height: number;
  readonly font: number;
  /** The fins: where they begin and end. */
  readonly core: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly foot: number;
  };
  /** From one fin to the next. */
  readonly pitch: number;
  /** Tubes of one pass side by side, from the middle of one to the next, half of a bore, rows behind the section. */
  readonly tubes: {
    readonly count: number;
    readonly pitch: number;
    readonly half: number;
    readonly rows: number;
  };
  /** How far aside and up the rear wall is drawn, and each row of tubes behind another. */
  readonly depth: number;
  readonly row: number;
  /** Thickness of a tube plate, and of a cast wall. */
  readonly plate: number;
  readonly wall: number;
  /** How far tube plates and flanges stand out at each side. */
  readonly rim: number;
  /** Height inside, and how much the roof rises to its middle. */
  readonly returnTank: number;
  readonly nozzleTank: number;
  readonly rise: number;
  /** Length of an air header, bore and length of the duct on it. */
  readonly header: number;
  readonly duct: { readonly half: number; readonly long: number };
  readonly nozzle: { readonly half: number; readonly wall: number; readonly long: number };
}

export const wideFrame: Frame = {
  isWide: true,
  width: 800,
  height: 462,
  font: 15,
  core: { left: 285, right: 515, top: 160, foot: 346 },
  pitch: 6,
  tubes: { count: 4, pitch: 25, half: 6, rows: 3 },
  depth: 34,
  row: 9,
  plate: 9,
  wall: 7,
  rim: 14,
  returnTank: 48,
  nozzleTank: 54,
  rise: 9,
  header: 92,
  duct: { half: 38, long: 62 },
  nozzle: { half: 11, wall: 4, long: 52 },
};

export const narrowFrame: Frame = {
  isWide: false,
  width: 350,
  height: 412,
  font: 14,
  core: { left: 113, right: 237, top: 146, foot: 308 },
  pitch: 6,
  tubes: { count: 3, pitch: 17, half: 4.5, rows: 2 },
  depth: 20,
  row: 6,
  plate: 8,
  wall: 6,
  rim: 9,
  returnTank: 40,
  nozzleTank: 46,
  rise: 5,
  header: 42,
  duct: { half: 24, long: 14 },
  nozzle: { half: 8, wall: 4, long: 20 },
};

/** Heights and sides that more than one part needs. */
export function measures(frame: Frame) {
  const { core, plate, wall, rim: out, returnTank, nozzleTank, rise, header, duct, nozzle, tubes } = frame;
  const middle = (core.left + core.right) / 2;
  const columns = Array.from({ length: tubes.count }, (_, i) => i + 1);
  const plateTop = core.top - plate;
  const plateFoot = core.foot + plate;
  const flange = plate;
  const floor = plateFoot + nozzleTank;
  const mouth = out + flange + header;
  const drain = ((tubes.count + 0.5) * tubes.pitch) / 2;
  return {
    middle,
    /** Middles of the tubes, from the partition outwards. */
    left: columns.map((i) => middle - i * tubes.pitch),
    right: columns.map((i) => middle + i * tubes.pitch),
    plateTop,
    plateFoot,
    /** Flanges and tube plates end here. */
    ends: [core.left - out, core.right + out] as const,
    /** Tanks outside, and inside. */
    tank: [core.left, core.right] as const,
    cavity: [core.left + wall, core.right - wall] as const,
    flange,
    /** The roof of the return tank: where it meets the end walls inside, and its crown outside. */
    eaves: plateTop - returnTank,
    crown: plateTop - returnTank - rise - wall,
    floor,
    foot: floor + wall,
    /** Low enough for the bolts of the flange. */
    nozzleAt: plateFoot + nozzleTank / 2 + flange / 2 + 1,
    axis: (core.top + core.foot) / 2,
    /** Headers begin behind their flanges and end where the ducts begin; ducts end here. */
    mouths: [core.left - mouth, core.right + mouth] as const,
    ductEnds: [core.left - mouth - duct.long, core.right + mouth + duct.long] as const,
    nozzleEnds: [core.left - nozzle.long, core.right + nozzle.long] as const,
    drains: [middle - drain, middle + drain] as const,
  };
}
