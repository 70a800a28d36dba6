import { useQuery } from '@tanstack/react-query';
import { type SyntheticEvent, useState } from 'react';
import { say } from '../../../src/language/speak.ts';
import type { Partner } from '../../../src/wardrobe/pairs/partners.ts';
import type { GarmentReport } from '../../../src/wardrobe/season/garment-report.ts';
import { call } from '../api/call.ts';
import { useGarments } from '../api/wardrobe.ts';
import { Button } from './button.tsx';
import { GarmentPhoto } from './garment-photo.tsx';
import { Problem } from './problem.tsx';

/** One garment that goes with the one looked at, and what speaks for it; leads there where `onOpen` is told. */
function PartnerTile({ partner, onOpen }: { partner: Partner; onOpen: ((id: string) => void) | undefined }) {
	const { data: garments = [] } = useGarments();
	const garment = garments.find(({ id }) => id === partner.garmentId);
	const words = (
		<>
			{garment ? <GarmentPhoto garment={garment} /> : null}
			<span className="tile-name">{partner.name}</span>
			<span className="small quiet">{partner.support.sentence}</span>
		</>
	);
	return onOpen ? (
		<button type="button" className="tile-button" onClick={() => onOpen(partner.garmentId)}>
			{words}
		</button>
	) : (
		<span className="tile">{words}</span>
	);
}

/** So many are shown before the rest is asked for: what can be told of the garment stands below them. */
const SHOWN = 6;

/** Everything that goes with a garment, with pictures; fetched when it is looked at. */
export function Partners({
	said: { garmentId, partnerCount, partners },
	seasonId,
	onOpen,
}: {
	said: GarmentReport;
	seasonId: string;
	onOpen: ((id: string) => void) | undefined;
}) {
	// Where a garment can be gone to, one came to look round.
	const [open, setOpen] = useState(onOpen !== undefined);
	const [all, setAll] = useState(false);
	const { data, error } = useQuery({
		queryKey: ['what-if', seasonId, 'partners', garmentId],
		queryFn: () => call('listPartners', { params: { id: seasonId }, query: { garmentId } }),
		enabled: open && partnerCount > partners.length,
	});
	const shown = (data ?? partners).slice(0, all ? undefined : SHOWN);
	if (partnerCount === 0) return <p>{say('garments.goesWith', { count: 0 })}</p>;
	return (
		<details open={open} onToggle={(event: SyntheticEvent<HTMLDetailsElement>) => setOpen(event.currentTarget.open)}>
			<summary>{say('garments.goesWith', { count: partnerCount })}</summary>
			<Problem of={error} />
			{open ? (
				<ul className="picks partners">
					{shown.map((partner) => (
						<li key={partner.garmentId}>
							<PartnerTile partner={partner} onOpen={onOpen} />
						</li>
					))}
				</ul>
			) : null}
			{data && shown.length < data.length ? (
				<Button small onPress={() => setAll(true)}>
					{say('garments.allPartners', { count: data.length })}
				</Button>
			) : null}
		</details>
	);
}
