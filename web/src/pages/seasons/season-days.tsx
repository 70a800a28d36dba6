import { say } from '../../../../src/language/speak.ts';
import { daysOfSeason } from '../../../../src/wardrobe/days/usual-days.ts';
import { OFFERED_OCCASIONS, type OfferedOccasion } from '../../../../src/wardrobe/words/kind.ts';
import type { Occasion, Season, SeasonDays } from '../../../../src/wardrobe/words/season.ts';
import { Button } from '../../parts/button.tsx';
import { SelectField, TextField } from '../../parts/field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { WearsFields } from './wears-fields.tsx';

const WEEK_DAYS = 7;
const MOST_OCCASIONS = 6;

type PartProps = { days: SeasonDays; onChange: (changes: Partial<SeasonDays>) => void };

/** What one occasion asks, and on how many days a week. */
function OccasionFields({
	occasion,
	onChange,
	onRemove,
}: {
	occasion: Occasion;
	onChange: (changes: Partial<Occasion>) => void;
	onRemove: () => void;
}) {
	const { name, like, daysAWeek } = occasion;
	return (
		<>
			<TextField
				label={say('seasonDays.occasion')}
				value={name}
				maxLength={100}
				onCommit={(text) => text.trim() && onChange({ name: text.trim() })}
			/>
			<SelectField<OfferedOccasion>
				label={say('seasonDays.like', { name })}
				value={like}
				options={OFFERED_OCCASIONS.map((offered) => ({ value: offered, label: say(`occasions.${offered}`) }))}
				onChange={(offered) => onChange({ like: offered })}
			/>
			<NumberField
				label={say('seasonDays.daysOf', { name })}
				value={daysAWeek}
				least={0}
				most={WEEK_DAYS}
				whole={false}
				onCommit={(count) => onChange({ daysAWeek: count })}
			/>
			<Button small onPress={onRemove} aria-label={say('seasonDays.removeOne', { name })}>
				{say('wishList.remove')}
			</Button>
		</>
	);
}

/** What the days are for. */
function Occasions({ days: { occasions }, onChange }: PartProps) {
	const change = (index: number, changes: Partial<Occasion>) =>
		onChange({ occasions: occasions.map((one, at) => (at === index ? { ...one, ...changes } : one)) });
	const asked = occasions.reduce((sum, { daysAWeek }) => sum + daysAWeek, 0);
	const offered = OFFERED_OCCASIONS.find((name) => !occasions.some((one) => one.name === name));
	return (
		<>
			<h3>{say('seasonDays.purpose')}</h3>
			<ul className="stack">
				{occasions.map((occasion, index) => (
					<li key={occasion.name} className="fields occasion">
						<OccasionFields
							occasion={occasion}
							onChange={(changes) => change(index, changes)}
							onRemove={() => onChange({ occasions: occasions.filter((_, at) => at !== index) })}
						/>
					</li>
				))}
			</ul>
			<p className="small quiet">
				{asked === WEEK_DAYS ? say('seasonDays.allTold') : say('seasonDays.someTold', { days: asked })}{' '}
				{say('seasonDays.serves')}
			</p>
			{offered && occasions.length < MOST_OCCASIONS ? (
				<Button onPress={() => onChange({ occasions: [...occasions, { name: offered, like: offered, daysAWeek: 1 }] })}>
					{say('seasonDays.add')}
				</Button>
			) : null}
		</>
	);
}

/** A temperature in degrees Celsius. */
const TEMPERATURES = { least: -60, most: 60, whole: false } as const;

/** What the season's days are like: two temperatures, the washing, and what the days are for. */
export function SeasonDaysFields({ season, onChange }: { season: Season; onChange: (days: SeasonDays) => void }) {
	const days = daysOfSeason(season);
	const set = (changes: Partial<SeasonDays>) => onChange({ ...days, ...changes });
	return (
		<section className="section stack" aria-labelledby="season-days">
			<h2 id="season-days">{say('seasonDays.title')}</h2>
			<div className="fields">
				<NumberField
					{...TEMPERATURES}
					label={say('seasonDays.cold')}
					value={days.coldDay}
					hint={season.days ? '' : say('seasonDays.offered')}
					onCommit={(coldDay) => set({ coldDay })}
				/>
				<NumberField
					{...TEMPERATURES}
					label={say('seasonDays.warm')}
					value={days.warmDay}
					onCommit={(warmDay) => set({ warmDay })}
				/>
				<NumberField
					label={say('seasonDays.wash')}
					value={days.washEveryDays}
					least={1}
					most={60}
					onCommit={(washEveryDays) => set({ washEveryDays })}
				/>
			</div>
			<Occasions days={days} onChange={set} />
			<WearsFields days={days} onChange={(wearsPerWash) => set({ wearsPerWash })} />
		</section>
	);
}
