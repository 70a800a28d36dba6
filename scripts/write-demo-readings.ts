// Reads the demo's pictures and keeps what was read beside them, so that the demo opens at once: `npm run demo-readings`. A test reads them anew.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { demoPicture, demoScenario, picturesOfScenario, READ_FOLDER, READINGS_FILE } from '../src/app/demo-scenario.ts';
import { speak } from '../src/language/speak.ts';
import { readPhoto } from '../src/photo/read-photo.ts';

// Sentences are kept by their names, so that each reader has them in a language of their own.
speak('kept');
const readings: Record<string, unknown> = {};
rmSync(READ_FOLDER, { recursive: true, force: true });
mkdirSync(READ_FOLDER);
for (const { file } of picturesOfScenario(await demoScenario())) {
	const result = await readPhoto(await demoPicture(file), { derived: true });
	if (!result.ok) throw new Error(`${file} cannot be read: ${result.message}`);
	readings[file] = result.reading;
	// The display copy of these small pictures is the picture itself.
	const { display: _display, ...kept } = result.derived;
	for (const [name, bytes] of Object.entries(kept))
		writeFileSync(`${READ_FOLDER}${file}.${name}.${name === 'labels' ? 'png' : 'webp'}`, bytes);
}
writeFileSync(READINGS_FILE, `${JSON.stringify(readings, null, '\t')}\n`);
