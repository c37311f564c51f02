/** Litres of air drawn as cubes, 10 cm a side, each holding as many grains as its mass. */
export interface LitreOfAirProps {
  readonly litres: readonly {
    /** The place in words: "1 inlet". */
    readonly label: string;
    readonly grams: number;
  }[];
}

/** More grains than this in one cube would touch. */
const mostGrains = 120;
const front = { x: 3, y: 33, side: 100 };
const depth = 30;

export function LitreOfAir({ litres }: LitreOfAirProps) {
  return (
    <ul class="litres">
      {litres.map(({ label, grams }) => (
        <li key={label}>
          <Cube grains={Math.round(grams / grainMass(litres))} />
          <b>{grams.toFixed(3)} g</b>
          {label}
        </li>
      ))}
    </ul>
  );
}

/** The mass that one grain stands for, in grams: a tenth, or where that gives too many grains, two, five or ten tenths. */
export function grainMass(litres: LitreOfAirProps["litres"]): number {
  const heaviest = Math.max(...litres.map(({ grams }) => grams));
  return [0.1, 0.2, 0.5].find((mass) => heaviest / mass <= mostGrains) ?? 1;
}

function Cube({ grains }: { grains: number }) {
  const { x, y, side } = front;
  const edge = `M${x} ${y}h${side}v${side}h${-side}z`;
  return (
    <svg viewBox={`0 0 ${side + depth + 6} ${side + depth + 6}`} aria-hidden="true">
      <path class="hidden-edge" d={`M${x} ${y + side}l${depth} ${-depth}h${side}m${-side} 0v${-side}`} />
      <path
        class="edge"
        d={`${edge}l${depth} ${-depth}h${side}v${side}l${-depth} ${depth}v${-side}l${depth} ${-depth}`}
      />
      <path
        class="grain"
        d={scattered(grains)
          .map(([u, v]) => `M${round(x + 6 + u * (side - 12))} ${round(y + 6 + v * (side - 12))}h0`)
          .join("")}
      />
    </svg>
  );
}

const round = (v: number) => Math.round(v * 10) / 10;

/**
 * Points spread evenly over a square: the additive recurrence of the plastic number, which keeps any count of points
 * well apart, and to which more air only adds.
 */
export function scattered(count: number): [number, number][] {
  const plastic = 1.324717957244746;
  const part = (n: number, step: number) => (0.5 + n * step) % 1;
  return Array.from({ length: count }, (_, n) => [part(n, 1 / plastic), part(n, 1 / plastic ** 2)]);
}
