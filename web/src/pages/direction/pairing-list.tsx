import { say } from '../../../../src/language/speak.ts';
import type { Pairing } from '../../../../src/wardrobe/pairs/pairings.ts';
import { tellingPairings } from '../../../../src/wardrobe/pairs/telling-pairings.ts';
import { saidColour } from '../../../../src/wardrobe/words/said-colour.ts';
import { Empty } from '../../parts/empty.tsx';
import { Chip } from '../../parts/swatch.tsx';

/** As many as are looked at; the rest on demand. */
const SHOWN = 6;

function Rows({ pairings }: { pairings: readonly Pairing[] }) {
	return (
		<ul className="pairings">
			{pairings.map(({ slotA, labA, kindA, slotB, labB, kindB, photos }) => (
				<li key={[slotA, ...labA, slotB, ...labB].join(' ')} className="pairing">
					<Chip lab={labA} />
					<Chip lab={labB} />
					<span>
						{say('pairingRow.worn', {
							colourA: saidColour(labA),
							pieceA: say(kindA ? `kinds.${kindA}` : `slots.${slotA}`),
							colourB: saidColour(labB),
							pieceB: say(kindB ? `kinds.${kindB}` : `slots.${slotB}`),
							pictures: say('counts.pictures', { count: photos }),
						})}
					</span>
				</li>
			))}
		</ul>
	);
}

/** Which colours the pictures wear with which: those that tell most first, the rest on demand. */
export function PairingList({ pairings }: { pairings: readonly Pairing[] }) {
	const sorted = tellingPairings(pairings);
	return (
		<section className="section" aria-labelledby="pairings">
			<h2 id="pairings">{say('wornTogether.title')}</h2>
			{sorted.length === 0 ? (
				<Empty title={say('wornTogether.none')}>
					<p>{say('wornTogether.noneHow')}</p>
				</Empty>
			) : (
				<Rows pairings={sorted.slice(0, SHOWN)} />
			)}
			{sorted.length > SHOWN ? (
				<details>
					<summary>{say('wornTogether.more', { count: sorted.length - SHOWN })}</summary>
					<Rows pairings={sorted.slice(SHOWN)} />
				</details>
			) : null}
		</section>
	);
}
