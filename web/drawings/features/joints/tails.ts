/** One tail on the side of a drawer: its corners at the end of the board and at the gauge line. */
export interface Tail {
  readonly end: readonly [top: number, foot: number];
  readonly base: readonly [top: number, foot: number];
}

export interface Layout {
  readonly tails: number;
  /** Width of a pin at the end of the tails, where it is narrowest. */
  readonly pin: number;
  /** How far a flank runs outward for each unit of length; 1 in 6 is 0.167. */
  readonly slope: number;
  /** Half pins above and below, at their narrowest. */
  readonly halfPin?: number;
  /** By how much each tail may differ from its fellows; 0 for a machine. */
  readonly unevenness?: number;
}

const UNEVEN = [0.9, -1, 0.4, -0.6, 1, -0.7, 0.5, -0.3];

/** Sets out a row of dovetails over `height`, for tails `length` long. Tails widen towards the end of the board. */
export function setOut(layout: Layout, height: number, length: number): readonly Tail[] {
  const { tails, pin, slope, halfPin = pin, unevenness = 0 } = layout;
  const width = (height - 2 * halfPin - (tails - 1) * pin) / tails;
  return Array.from({ length: tails }, (_, i) => {
    const off = (by: number) => unevenness * (UNEVEN[(2 * i + by) % UNEVEN.length] ?? 0);
    const top = halfPin + i * (width + pin) + off(0);
    const foot = halfPin + i * (width + pin) + width + off(1);
    return { end: [top, foot], base: [top + slope * length, foot - slope * length] };
  });
}
