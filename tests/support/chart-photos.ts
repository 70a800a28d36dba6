import { readFileSync } from 'node:fs';
import type { Lab65 } from '../../src/colour/lab65.ts';

type Box = {
	readonly number: number;
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
};
export type ChartPhoto = {
	readonly file: string;
	readonly illuminant: string;
	readonly bytes: Uint8Array;
	readonly boxes: readonly Box[];
	/** Middle of the white patch, with its true colour. */
	readonly neutral: { readonly x: number; readonly y: number; readonly lab: Lab65 };
	readonly camera: { readonly exposureStops: number; readonly contrast: number; readonly saturation: number };
};

const folder = new URL('../../fixtures/charts/', import.meta.url);
const truth = JSON.parse(readFileSync(new URL('truth.json', folder), 'utf8')) as {
	readonly patches: readonly { readonly lab: Lab65 }[];
	readonly charts: readonly Omit<ChartPhoto, 'bytes'>[];
};

/** The thirty synthesised photos of the chart. */
export const chartPhotos = (): ChartPhoto[] =>
	truth.charts.map((chart) => ({ ...chart, bytes: readFileSync(new URL(chart.file, folder)) }));
