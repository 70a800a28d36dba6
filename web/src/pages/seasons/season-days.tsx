import { say } from '../../../../src/language/speak.ts';
import { daysOfSeason } from '../../../../src/wardrobe/days/usual-days.ts';
import { OFFERED_OCCASIONS, type OfferedOccasion } from '../../../../src/wardrobe/words/kind.ts';
import type { Occasion, Season, SeasonDays } from '../../../../src/wardrobe/words/season.ts';
import { Button } from '../../parts/button.tsx';
import { SelectField, TextField } from '../../parts/field.tsx';
import { WearsFields } from './wears-fields.tsx';

const numberIn = (text: string, least: number, most: number) =>
	Math.min(most, Math.max(least, Number.parseFloat(text) || 0));

const WEEK_DAYS = 7;

/** What the season's days are like: two temperatures, the washing, and what the days are for. */
export function SeasonDaysFields({ season, onChange }: { season: Season; onChange: (days: SeasonDays) => void }) {
	const days = daysOfSeason(season);
	const set = (changes: Partial<SeasonDays>) => onChange({ ...days, ...changes });
	const setOccasion = (index: number, changes: Partial<Occasion>) =>
		set({ occasions: days.occasions.map((one, at) => (at === index ? { ...one, ...changes } : one)) });
	const asked = days.occasions.reduce((sum, { daysAWeek }) => sum + daysAWeek, 0);
	const offered = OFFERED_OCCASIONS.find((name) => !days.occasions.some((one) => one.name === name));
	return (
		<section className="section" aria-labelledby="season-days">
			<h2 id="season-days">{say('seasonDays.title')}</h2>
			<div className="fields">
				<TextField
					label={say('seasonDays.cold')}
					type="number"
					min={-60}
					max={60}
					value={String(days.coldDay)}
					hint={season.days ? '' : say('seasonDays.offered')}
					onCommit={(text) => set({ coldDay: numberIn(text, -60, 60) })}
				/>
				<TextField
					label={say('seasonDays.warm')}
					type="number"
					min={-60}
					max={60}
					value={String(days.warmDay)}
					onCommit={(text) => set({ warmDay: numberIn(text, -60, 60) })}
				/>
				<TextField
					label={say('seasonDays.wash')}
					type="number"
					min={1}
					max={60}
					value={String(days.washEveryDays)}
					onCommit={(text) => set({ washEveryDays: Math.round(numberIn(text, 1, 60)) })}
				/>
			</div>
			<h3>{say('seasonDays.purpose')}</h3>
			<ul className="plain stack">
				{days.occasions.map((occasion, index) => (
					<li key={occasion.name} className="fields">
						<TextField
							label={say('seasonDays.occasion')}
							value={occasion.name}
							maxLength={100}
							onCommit={(name) => name.trim() && setOccasion(index, { name: name.trim() })}
						/>
						<SelectField<OfferedOccasion>
							label={say('seasonDays.like', { name: occasion.name })}
							value={occasion.like}
							options={OFFERED_OCCASIONS.map((name) => ({ value: name, label: say(`occasions.${name}`) }))}
							onChange={(like) => setOccasion(index, { like })}
						/>
						<TextField
							label={say('seasonDays.daysOf', { name: occasion.name })}
							type="number"
							min={0}
							max={WEEK_DAYS}
							value={String(occasion.daysAWeek)}
							onCommit={(text) => setOccasion(index, { daysAWeek: numberIn(text, 0, WEEK_DAYS) })}
						/>
						<Button
							small
							onPress={() => set({ occasions: days.occasions.filter((_, at) => at !== index) })}
							aria-label={say('seasonDays.removeOne', { name: occasion.name })}
						>
							{say('wishList.remove')}
						</Button>
					</li>
				))}
			</ul>
			<p className="small quiet">
				{asked === WEEK_DAYS ? say('seasonDays.allTold') : say('seasonDays.someTold', { days: asked })}{' '}
				{say('seasonDays.serves')}
			</p>
			{offered && days.occasions.length < 6 ? (
				<Button onPress={() => set({ occasions: [...days.occasions, { name: offered, like: offered, daysAWeek: 1 }] })}>
					{say('seasonDays.add')}
				</Button>
			) : null}
			<WearsFields days={days} onChange={(wearsPerWash) => set({ wearsPerWash })} />
		</section>
	);
}
