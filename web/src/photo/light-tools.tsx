import { useRef, useState } from 'react';
import type { LightTrial } from '../../../src/app/tried-light.ts';
import type { PhotoRecord } from '../../../src/store/store.ts';
import { type Correction, type NeutralPoint, neutralsOf } from '../../../src/wardrobe/words/reading.ts';
import { call } from '../api/call.ts';
import { useChange } from '../api/change.ts';
import { correctPhoto } from '../api/change-thing.ts';
import { usePicture } from '../api/pictures.ts';
import { Button } from '../parts/button.tsx';
import { Field, SelectField, TextField } from '../parts/field.tsx';
import { Problem } from '../parts/problem.tsx';
import { BeforeAfter } from './before-after.tsx';
import { NeutralTrial } from './neutral-trial.tsx';
import { PicturePointer, type Point } from './picture-pointer.tsx';

/** Things that are neutral in truth, with the CIELAB lightness they usually have. */
const NEUTRALS = [
	{ value: '95', label: 'white paper or sheet (L* 95)' },
	{ value: '90', label: 'the back of a receipt (L* 90)' },
	{ value: '50', label: 'grey card (L* 50)' },
	{ value: '67', label: 'light grey card (L* 67)' },
	{ value: '', label: 'something neutral: decide by how bright it is' },
] as const;

const CAMERAS = [
	{ value: '', label: 'as the file says, else a phone' },
	{ value: 'phone', label: 'a phone' },
	{ value: 'camera', label: 'a camera' },
] as const;

/** From this lightness on a neutral counts as white: one white and one grey can be kept together. */
const isWhite = ({ lightness }: NeutralPoint): boolean => (lightness ?? 95) >= 88;

/** Puts the light of a photo right: a neutral pointed at, steps by hand, a group of photos taken in one go. */
export function LightTools({ photo }: { photo: PhotoRecord }) {
	const { correction, reading } = photo;
	const surface = useRef<HTMLImageElement>(null);
	const address = usePicture(photo.id, 'display');
	const [lightness, setLightness] = useState<(typeof NEUTRALS)[number]['value']>('95');
	const { mask: _kept, ground: _beside, neutral: _older, ...own } = correction;
	const save = useChange((next: Omit<Correction, 'mask' | 'ground'>) =>
		correctPhoto(photo, (version) => call('correctPhoto', { params: { id: photo.id }, body: { ...next, version } })),
	);
	const width = reading?.widthPx ?? 1;
	const height = reading?.heightPx ?? 1;
	const byHand = correction.byHand ?? { warmer: 0, lighter: 0 };
	const [tried, setTried] = useState<readonly NeutralPoint[]>([]);
	const tryOut = useChange(
		(neutrals: readonly NeutralPoint[]) => call('tryLight', { params: { id: photo.id }, body: { neutrals } }),
		(_, neutrals) => setTried(neutrals),
	);
	const onTap = ({ x, y }: Point) => {
		const point = {
			x: Math.floor(x * width),
			y: Math.floor(y * height),
			...(lightness === '' ? {} : { lightness: Number(lightness) }),
		};
		// The other kind stays: a white and a grey together tell most.
		tryOut.run([...neutralsOf(correction).filter((one) => isWhite(one) !== isWhite(point)), point]);
	};
	const keep = ({ neutrals }: LightTrial) => {
		const kept = tried.flatMap((point, index) => {
			const answer = neutrals[index]?.answer;
			return answer === 'refused' ? [] : [answer === 'asked' ? { ...point, sure: true } : point];
		});
		save.run({ ...own, neutrals: kept });
		tryOut.reset();
		setTried([]);
	};
	const shown = tryOut.output ? tried : neutralsOf(correction);
	const marks = shown.map(({ x, y }) => ({ x: x / width, y: y / height }));
	const hand = (key: 'warmer' | 'lighter', less: string, more: string) => (
		<Field label={`${less} – ${more}: ${byHand[key]}`}>
			{(ids) => (
				<input
					{...ids}
					type="range"
					min={-10}
					max={10}
					key={byHand[key]}
					defaultValue={byHand[key]}
					onPointerUp={(event) => save.run({ ...own, byHand: { ...byHand, [key]: Number(event.currentTarget.value) } })}
					onKeyUp={(event) => save.run({ ...own, byHand: { ...byHand, [key]: Number(event.currentTarget.value) } })}
				/>
			)}
		</Field>
	);
	return (
		<div className="stack">
			<p>
				Tap something that is white or grey in truth; one of each tells most. You see before and after, and nothing is
				kept until you say so.
			</p>
			<SelectField label="What you tap" value={lightness} options={NEUTRALS} onChange={setLightness} />
			<PicturePointer label="The photo, to point at something neutral" surface={surface} onTap={onTap} marks={marks}>
				{address ? <img ref={surface} className="pointer-picture" src={address} alt="" draggable={false} /> : null}
			</PicturePointer>
			{tryOut.busy ? <p className="small quiet italic">trying it out …</p> : null}
			{tryOut.output && address ? (
				<NeutralTrial
					photo={photo}
					address={address}
					trial={tryOut.output}
					onKeep={() => tryOut.output && keep(tryOut.output)}
					onDrop={() => {
						tryOut.reset();
						setTried([]);
					}}
				/>
			) : null}
			{!tryOut.output && address && reading?.light.model ? (
				<BeforeAfter address={address} model={reading.light.model} afterWords="as it is corrected now" />
			) : null}
			<SelectField
				label="Taken by"
				value={correction.camera ?? ''}
				options={CAMERAS}
				onChange={(camera) => {
					const { camera: _old, ...rest } = own;
					save.run(camera === '' ? rest : { ...rest, camera });
				}}
			/>
			<div className="fields">
				{hand('warmer', 'cooler', 'warmer')}
				{hand('lighter', 'darker', 'lighter')}
			</div>
			<TextField
				label="Taken in the same light as"
				hint="Photos with the same word here share one correction."
				value={correction.lightGroup ?? ''}
				maxLength={100}
				onCommit={(lightGroup) => {
					const { lightGroup: _old, ...rest } = own;
					save.run(lightGroup ? { ...rest, lightGroup } : rest);
				}}
			/>
			<Button onPress={() => save.run({})} isPending={save.busy} isDisabled={Object.keys(own).length === 0}>
				Take back every correction of the light
			</Button>
			<Problem of={save.problem ?? tryOut.problem} />
		</div>
	);
}
