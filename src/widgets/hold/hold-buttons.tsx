import type { useHold } from "./use-hold.ts";

/** Holds the numbers that stand, or lets go of those held; the one button stays, so that the focus does. */
export function HoldButtons({
  hold: { isHeld, toggle, swap },
  isStale,
}: {
  hold: ReturnType<typeof useHold>;
  isStale: boolean;
}) {
  return (
    <>
      <button type="button" class="btn quiet" disabled={isStale && !isHeld} onClick={toggle}>
        {isHeld ? "Let go" : "Hold these numbers"}
      </button>
      {isHeld && (
        <button type="button" class="btn quiet" disabled={isStale} onClick={swap}>
          Swap with those held
        </button>
      )}
      <p class="msg" role="status">
        {isHeld && "Numbers held. What you change now says what it was."}
      </p>
    </>
  );
}
