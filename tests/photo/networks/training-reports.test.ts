import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const fileOf = (path: string) => readFileSync(new URL(`../../../src/photo/networks/${path}`, import.meta.url));

type Report = { readonly sha256: string; readonly figures: Readonly<Record<string, unknown>> };

describe.each(['outline', 'kinds', 'pattern', 'apart'])('the report beside the network "%s"', (name) => {
	const report = JSON.parse(fileOf(`${name}/training-report.json`).toString()) as Report;

	it('is of the file that ships', () => {
		const hash = createHash('sha256')
			.update(fileOf(`${name}/${name}.onnx`))
			.digest('hex');
		expect(report.sha256).toBe(hash);
	});

	it('gives figures, and the model card says where they stand', () => {
		expect(Object.keys(report.figures).length).toBeGreaterThan(0);
		expect(fileOf(`${name}/MODEL-CARD.md`).toString()).toContain('training-report.json');
	});
});
