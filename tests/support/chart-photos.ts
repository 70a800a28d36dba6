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

/** True CIELAB colours of the 24 patches, patch 1 first (worked out from published spectra, see fixtures/charts/README.md). */
const CHART_PATCHES: readonly Lab65[] = truth.patches.map(({ lab }) => lab);

/** Number of the first of the six grey patches, counted from 0; the white one. */
const FIRST_GREY = 18;

/** The thirty synthesised photos of the chart. */
export const chartPhotos = (): ChartPhoto[] =>
	truth.charts.map((chart) => ({ ...chart, bytes: readFileSync(new URL(chart.file, folder)) }));

/** Middle of every patch of a photo, patch 1 first. */
const patchMiddles = ({ boxes }: ChartPhoto) =>
	boxes.map(({ x, y, width, height }) => ({ x: x + width / 2, y: y + height / 2 }));
