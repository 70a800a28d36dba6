import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { GroundWord } from '../../../../src/app/decisions/say-ground.ts';
import type { GroundSet } from '../../../../src/app/grounds.ts';
import { say } from '../../../../src/language/speak.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { queryOf } from '../../api/refresh.ts';
import { Button } from '../../parts/button.tsx';
import { PhotoTile } from '../../parts/photo-tile.tsx';
import { Problem } from '../../parts/problem.tsx';

/** What is made of a set's ground, in one sentence. */
const useOf = ({ unused, measuredBy }: GroundSet): string =>
	say(unused ? `grounds.${unused}` : measuredBy.length > 0 ? 'grounds.measured' : 'grounds.agreed');

/** One set: its photos to choose from, and what is made of their ground. */
function GroundPhotos({
	set,
	chosen,
	onToggle,
	onOne,
}: {
	set: GroundSet;
	chosen: ReadonlySet<string>;
	onToggle: (id: string) => void;
	onOne: () => void;
}) {
	return (
		<li className="stack">
			<p>
				{say('grounds.photos', { count: set.photoIds.length })}. {useOf(set)} {set.told ? say('grounds.told') : ''}
			</p>
			<div className="ground-photos">
				{set.photoIds.map((id, index) => (
					<label key={id} className="ground-photo">
						<PhotoTile photoId={id} alt="" />
						<input
							type="checkbox"
							checked={chosen.has(id)}
							onChange={() => onToggle(id)}
							aria-label={say('grounds.photo', { number: index + 1 })}
						/>
					</label>
				))}
			</div>
			{set.told ? null : (
				<Button small onPress={onOne}>
					{say('grounds.one')}
				</Button>
			)}
		</li>
	);
}

/** The photos that show one bed, floor or wall, where the user confirms or parts them. Fetched once it is opened. */
export function Grounds() {
	const [isOpen, setOpen] = useState(false);
	const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
	const { data: sets, error, refetch } = useQuery({ ...queryOf('listGrounds', {}), enabled: isOpen });
	const word = useChange(
		(body: { photoIds: string[]; word: GroundWord }) => call('sayGround', { body }),
		() => {
			setChosen(new Set());
			void refetch();
		},
	);
	const toggle = (id: string) =>
		setChosen((old) => new Set(old.has(id) ? [...old].filter((one) => one !== id) : [...old, id]));
	const sayOf = (what: GroundWord) => word.run({ photoIds: [...chosen], word: what });
	return (
		<details className="stack" onToggle={(event) => setOpen(event.currentTarget.open)}>
			<summary>{say('grounds.title')}</summary>
			<p className="small quiet">{say('grounds.what')}</p>
			<Problem of={error ?? word.problem} />
			{sets?.length === 0 ? <p>{say('grounds.none')}</p> : null}
			<ul className="stack">
				{sets?.map((set) => (
					<GroundPhotos
						key={set.photoIds[0]}
						set={set}
						chosen={chosen}
						onToggle={toggle}
						onOne={() => word.run({ photoIds: [...set.photoIds], word: 'one' })}
					/>
				))}
			</ul>
			{chosen.size > 0 ? (
				<div className="row">
					<span>{say('grounds.chosen', { count: chosen.size })}</span>
					<Button small onPress={() => sayOf('one')} isDisabled={chosen.size < 2} isPending={word.busy}>
						{say('grounds.join')}
					</Button>
					<Button small onPress={() => sayOf('apart')} isPending={word.busy}>
						{say('grounds.apart')}
					</Button>
					<Button small onPress={() => sayOf('by-look')} isPending={word.busy}>
						{say('grounds.byLook')}
					</Button>
				</div>
			) : null}
		</details>
	);
}
