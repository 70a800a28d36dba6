import { applyMatrix, bradfordMatrix, type Xyz } from '../../src/colour/adaptation.ts';

/** White points that the program itself never uses, Y = 1: D50 as ICC profiles have it, illuminant A (CIE 15). */
export const WHITE_D50: Xyz = [0.96422, 1, 0.82521];
export const WHITE_A: Xyz = [1.0985, 1, 0.35585];

/** XYZ under `to` that looks like `xyz` under `from`. */
export const adaptXyz = (xyz: Xyz, from: Xyz, to: Xyz, degree = 1): Xyz =>
	applyMatrix(bradfordMatrix(from, to, degree), xyz);
