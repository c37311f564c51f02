import type { ComponentChildren } from "preact";
import { r1 } from "./numbers.ts";

interface Size {
  readonly width: number;
  readonly font: number;
}

interface PictureProps<S extends Size> {
  readonly label: string;
  /** A drawing for a wide place and one for a narrow place, of which the style sheet shows one; or one for both. */
  readonly sizes: readonly [wide: S, narrow: S] | readonly [both: S];
  readonly draw: (size: S) => { readonly height: number; readonly drawing: ComponentChildren };
}

export function Picture<S extends Size>({ label, sizes, draw }: PictureProps<S>) {
  return (
    <div class="picture">
      {sizes.map((size, i) => {
        const { height, drawing } = draw(size);
        return (
          <svg
            class={sizes.length === 1 ? "alone" : i ? "narrow-only" : "wide-only"}
            viewBox={`0 0 ${size.width} ${height}`}
            width={size.width}
            height={height}
            font-size={size.font}
            role="img"
            aria-label={label}
          >
            {drawing}
          </svg>
        );
      })}
    </div>
  );
}

interface WordsProps {
  readonly look: string;
  readonly x: number;
  readonly y: number;
  readonly children: ComponentChildren;
}

export const Words = ({ look, x, y, children }: WordsProps) => (
  <text class={look} x={r1(x)} y={r1(y)}>
    {children}
  </text>
);
