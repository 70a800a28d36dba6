import { say } from '../../../../src/language/speak.ts';
import type { Pairing } from '../../../../src/wardrobe/pairs/pairings.ts';
import { saidColour } from '../../../../src/wardrobe/words/said-colour.ts';
import { Empty } from '../../parts/empty.tsx';
import { Chip } from '../../parts/swatch.tsx';

const SHOWN = 24;

/** Which colours the pictures wear with which, slot by slot, what is seen most first. */
export function PairingList({ pairings }: { pairings: readonly Pairing[] }) {
	const sorted = [...pairings].sort((a, b) => b.photos - a.photos);
	const row = ({ slotA, labA, kindA, slotB, labB, kindB, photos }: Pairing, index: number) => (
		<li key={index} className="pairing">
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
	);
	return (
		<section className="section" aria-labelledby="pairings">
			<h2 id="pairings">Worn together</h2>
			{sorted.length === 0 ? (
				<Empty title="No pairing seen">
					<p>Pictures of people in whole outfits show which colours are worn with which.</p>
				</Empty>
			) : (
				<>
					<ul className="pairings">{sorted.slice(0, SHOWN).map(row)}</ul>
					{sorted.length > SHOWN ? (
						<details>
							<summary>{sorted.length - SHOWN} more</summary>
							<ul className="pairings">{sorted.slice(SHOWN).map(row)}</ul>
						</details>
					) : null}
				</>
			)}
		</section>
	);
}
