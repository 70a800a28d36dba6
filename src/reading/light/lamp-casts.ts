/** Logarithms (base 2) of how much stronger red and blue are than green on a grey surface; 0, 0 in daylight. */
export type CastStops = { readonly red: number; readonly blue: number };

/** The cast of a grey surface whose linear-light channels are given, each above 0. */
export const stopsOf = (r: number, g: number, b: number): CastStops => ({
	red: Math.log2(r / g),
	blue: Math.log2(b / g),
});

/** Direction of warmth: red rises while blue falls, blue about 1.6 times as much (black bodies from 2700 to 6500 K in linear sRGB). */
const WARM: readonly [red: number, blue: number] = [0.53, -0.848];

/** Stops of warmth (+) or coldness (-) in a cast. */
export const alongOf = ({ red, blue }: CastStops): number => red * WARM[0] + blue * WARM[1];

/** Stops of magenta (+) or green (-) in a cast: what lies across warm and cold. */
export const acrossOf = ({ red, blue }: CastStops): number => red * -WARM[1] + blue * WARM[0];
