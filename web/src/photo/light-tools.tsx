import { useRef, useState } from 'react';
import { say } from '../../../src/language/speak.ts';
import type { PhotoRecord } from '../../../src/store/store.ts';
import { usePicture } from '../api/pictures.ts';
import { Button } from '../parts/button.tsx';
import { Field, SelectField, TextField } from '../parts/field.tsx';
import { Problem } from '../parts/problem.tsx';
import { BeforeAfter } from './before-after.tsx';
import { NeutralTrial } from './neutral-trial.tsx';
import { PicturePointer, type Point } from './picture-pointer.tsx';
import { type LightInHand, useLight } from './use-light.ts';

/** Things that are neutral in truth, with the CIELAB lightness they usually have. */
const NEUTRALS = [
	{ value: '95', words: 'lightTools.white' },
	{ value: '90', words: 'lightTools.receipt' },
	{ value: '50', words: 'lightTools.grey' },
	{ value: '67', words: 'lightTools.lightGrey' },
	{ value: '', words: 'lightTools.byBrightness' },
] as const;

const CAMERAS = [
	{ value: '', words: 'lightTools.asFile' },
	{ value: 'phone', words: 'lightTools.phone' },
	{ value: 'camera', words: 'lightTools.camera' },
] as const;

/** The photo, to point at something neutral in it; what it is said to be decides how light it is taken for. */
function NeutralPointer({ photo, address, light }: { photo: PhotoRecord; address: string | null; light: LightInHand }) {
	const surface = useRef<HTMLImageElement>(null);
	const [lightness, setLightness] = useState<(typeof NEUTRALS)[number]['value']>('95');
	const width = photo.reading?.widthPx ?? 1;
	const height = photo.reading?.heightPx ?? 1;
	const onTap = ({ x, y }: Point) =>
		light.tryNeutral({
			x: Math.floor(x * width),
			y: Math.floor(y * height),
			...(lightness === '' ? {} : { lightness: Number(lightness) }),
		});
	return (
		<>
			<SelectField
				label={say('lightTools.whatYouTap')}
				value={lightness}
				options={NEUTRALS.map(({ value, words }) => ({ value, label: say(words) }))}
				onChange={setLightness}
			/>
			<PicturePointer
				label={say('lightTools.picture')}
				surface={surface}
				onTap={onTap}
				marks={light.shown.map(({ x, y }) => ({ x: x / width, y: y / height }))}
			>
				{address ? <img ref={surface} className="pointer-picture" src={address} alt="" draggable={false} /> : null}
			</PicturePointer>
		</>
	);
}

/** Steps by hand, sent when the handle is let go. */
function HandSteps({ light, which }: { light: LightInHand; which: 'warmer' | 'lighter' }) {
	const byHand = light.own.byHand ?? { warmer: 0, lighter: 0 };
	const send = (text: string) => {
		if (Number(text) !== byHand[which]) light.change({ ...light.own, byHand: { ...byHand, [which]: Number(text) } });
	};
	return (
		<Field label={say(`lightTools.${which}`, { steps: byHand[which] })}>
			{(ids) => (
				<input
					{...ids}
					type="range"
					min={-10}
					max={10}
					key={byHand[which]}
					defaultValue={byHand[which]}
					onPointerUp={(event) => send(event.currentTarget.value)}
					onKeyUp={(event) => send(event.currentTarget.value)}
				/>
			)}
		</Field>
	);
}

/** What else tells of the light: the camera, steps by hand, and the photos taken in the same light. */
function LightFields({ light }: { light: LightInHand }) {
	const { own } = light;
	return (
		<>
			<SelectField
				label={say('lightTools.takenBy')}
				value={own.camera ?? ''}
				options={CAMERAS.map(({ value, words }) => ({ value, label: say(words) }))}
				onChange={(camera) => {
					const { camera: _old, ...rest } = own;
					light.change(camera === '' ? rest : { ...rest, camera });
				}}
			/>
			<div className="fields">
				<HandSteps light={light} which="warmer" />
				<HandSteps light={light} which="lighter" />
			</div>
			<TextField
				label={say('lightTools.sameAs')}
				hint={say('lightTools.sameAsHint')}
				value={own.lightGroup ?? ''}
				maxLength={100}
				onCommit={(lightGroup) => {
					const { lightGroup: _old, ...rest } = own;
					light.change(lightGroup ? { ...rest, lightGroup } : rest);
				}}
			/>
		</>
	);
}

/** Puts the light of a photo right: a neutral pointed at, steps by hand, a group of photos taken in one go; before and after stand side by side, with the way back. */
export function LightTools({ photo }: { photo: PhotoRecord }) {
	const address = usePicture(photo.id, 'display');
	const light = useLight(photo);
	const model = photo.reading?.light.model;
	return (
		<div className="stack">
			<p>{say('lightTools.how')}</p>
			<NeutralPointer photo={photo} address={address} light={light} />
			{light.isTrying ? <p className="small quiet italic">{say('lightTools.trying')}</p> : null}
			{light.trial && address ? (
				<NeutralTrial
					photo={photo}
					address={address}
					trial={light.trial}
					onKeep={light.keepTrial}
					onDrop={light.dropTrial}
				/>
			) : null}
			{!light.trial && address && model ? (
				<BeforeAfter address={address} model={model} afterWords={say('lightTools.now')} />
			) : null}
			<div className="row">
				<Button onPress={light.stepBack} isPending={light.isSaving} isDisabled={!light.canStepBack}>
					{say('lightTools.stepBack')}
				</Button>
				<Button look="bare" onPress={light.takeBack} isDisabled={!light.isCorrected}>
					{say('lightTools.takeBack')}
				</Button>
			</div>
			<Problem of={light.problem} />
			<LightFields light={light} />
		</div>
	);
}
