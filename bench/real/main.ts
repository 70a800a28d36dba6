/**
 * Judgements that hang on real wardrobes and outfits, on photos that stay outside the project:
 *
 *     dyelot read --json PHOTO... > READINGS; node --import tsx bench/real/main.ts READINGS LIST
 *
 * LIST says what the photos are of: a header, then `photo,home,kind` a line, the photo as in READINGS; `outfit` as kind is somebody dressed.
 */
import { textOfTable } from '../table.ts';
import { lonerTable } from './loners.ts';
import { realReadings } from './real-readings.ts';
import { retrievalTable } from './retrieval.ts';

const [readings, list, ...more] = process.argv.slice(2);
if (!readings || !list || more.length > 0) {
	console.error(
		'Expected a file of readings and a list of what they are of. Usage: node --import tsx bench/real/main.ts READINGS LIST',
	);
	process.exit(2);
}
const real = realReadings(readings, list);
console.log(
	`${real.homes.length} homes of ${real.homes.map((home) => home.length).join(', ')} garments; ${real.outfits.length} outfits`,
);
for (const tableOf of [lonerTable, retrievalTable]) console.log(textOfTable(tableOf(real)));
