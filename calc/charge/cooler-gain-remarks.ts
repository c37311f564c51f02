import type { Trace } from "../relation/trace.ts";
import type { CoolerGainFound } from "./cooler-gain.ts";
import type { Drive, DriveCost } from "./cooler-gain-drive.ts";
import {
  type Compared,
  type Cooled,
  type Engine,
  MOST_WITHOUT_COOLER,
  type Shared,
} from "./cooler-gain-engines.ts";

interface Compare {
  readonly shared: Shared;
  readonly engines: Readonly<Record<Exclude<Compared, "cooled">, Engine | undefined>> & {
    readonly cooled: Cooled;
  };
  readonly found: CoolerGainFound;
}

/** Says where the cooler costs more than it earns, and why a comparison or a break-even is missing. */
export function remarkOnGain({ shared, engines, found }: Compare, trace: Trace): void {
  const { cooler } = shared.stage;
  const { cooled, pressure, density } = engines;
  const tell = (about: string, says: string) => trace.note({ about, says });
  const Delta_p = cooler.kind === "none" ? 0 : cooler.Delta_p;

  if (cooled.charge.T > cooled.path.before.T)
    tell(
      "T_w_in",
      "The water is hotter than the air, so the cooler heats it. It costs air at any loss, and does not break even.",
    );
  const even = found.Delta_p_outlet;
  if (even !== undefined && Delta_p > even)
    trace.note({
      about: "Delta_p_23",
      says: "This is more than the bound, where the cooler breaks even. It costs more air than it earns: behind the same compressor the charge would be denser without it.",
      limit: { value: even, kind: "pressureDifference" },
    });

  if (!pressure)
    tell(
      "D_pressure",
      "The cooler loses more pressure than the compressor gave, so that the manifold is below the compressor inlet. No compressor makes such a pressure, and the comparison at the same manifold pressure is left out.",
    );
  else if (cooler.kind === "temperature")
    tell(
      "Delta_p_pressure",
      "The outlet temperature of the cooler is held, so at the same manifold pressure a greater loss does not thin the charge. There it has no break-even loss.",
    );
  else if (found.Delta_p_pressure === undefined)
    tell(
      "Delta_p_pressure",
      (found.D_pressure ?? 0) < 1
        ? "At the same manifold pressure the cooler thins the charge even without a loss, so there it has no break-even loss."
        : `At the same manifold pressure the cooler gains at any loss that a compressor of ratio ${MOST_WITHOUT_COOLER} can make up for, so no break-even loss is given there.`,
    );

  if (!density)
    tell(
      "r_density",
      cooled.charge.rho < shared.inlet.rho
        ? "The charge is thinner than the air at the compressor inlet, so that no compressor is needed for it without the cooler. The comparison at the same density is left out."
        : `Without the cooler no pressure ratio up to ${MOST_WITHOUT_COOLER} gives this density. The comparison at the same density is left out.`,
    );
  else if (found.Delta_p_density === undefined)
    tell(
      "Delta_p_density",
      "At the same density the cooler would heat the air of the engine that it is compared with, so there it has no break-even loss.",
    );
}

/** Says which of the engines without a cooler the turbine could not serve. */
export function remarkOnDrive(
  drive: Drive,
  engines: Readonly<Record<Compared, Engine | undefined>>,
  costs: Readonly<Record<Compared, DriveCost | undefined>>,
  trace: Trace,
): void {
  if (drive.kind !== "exhaust") return;
  const names = { outlet: "compressor outlet", pressure: "manifold pressure", density: "density" } as const;
  for (const [which, what] of Object.entries(names) as [keyof typeof names, string][])
    if (engines[which] && costs[which]?.p_T === undefined)
      trace.note({
        about: `p_T_${which}`,
        says: `Without the cooler and at the same ${what} the turbine would be asked for more than it can take from the exhaust. What it costs is left out there.`,
      });
}
