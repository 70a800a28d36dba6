import { useEffect, useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Problem } from '../../parts/problem.tsx';
import { type Box, BoxChooser } from '../../photo/box-chooser.tsx';
import { cropAsFile, loadPicture, offeredPicture } from '../../photo/picture-pixels.ts';
import '../../photo/photo-editor.css';

const WHOLE: Box = { left: 0, top: 0, right: 1, bottom: 1 };

/** The file as an address to show, and the box on it: of a screenshot, where its picture lies, until the user says otherwise. */
function useBox(file: File) {
	const [address, setAddress] = useState<string | null>(null);
	const [proposed, setProposed] = useState<Box | null>(null);
	const [drawn, setBox] = useState<Box | null>(null);
	useEffect(() => {
		const made = URL.createObjectURL(file);
		let left = false;
		setAddress(made);
		loadPicture(made).then(
			(picture) => !left && setProposed(offeredPicture(picture)),
			// A format that the browser cannot show is taken whole.
			() => !left && setProposed(null),
		);
		return () => {
			left = true;
			URL.revokeObjectURL(made);
		};
	}, [file]);
	return { address, box: drawn ?? proposed ?? WHOLE, isProposed: proposed !== null && drawn === null, setBox };
}

/** A picture of an offer, cropped to the piece or taken whole. A format the browser cannot show is taken whole. */
export function CropDialog({
	file,
	left,
	onUse,
	onClose,
}: {
	file: File;
	left: number;
	onUse: (file: File) => void;
	onClose: () => void;
}) {
	const { address, box, isProposed, setBox } = useBox(file);
	const [problem, setProblem] = useState<Error | null>(null);
	const crop = async () => {
		try {
			const picture = await loadPicture(address!);
			const { naturalWidth: width, naturalHeight: height } = picture;
			const piece = {
				x: box.left * width,
				y: box.top * height,
				width: (box.right - box.left) * width,
				height: (box.bottom - box.top) * height,
			};
			onUse(await cropAsFile(picture, piece, file.name || 'screenshot.jpg'));
		} catch {
			setProblem(new Error(say('shopPage.cannotShow')));
		}
	};
	const whole = box.left === 0 && box.top === 0 && box.right === 1 && box.bottom === 1;
	return (
		<Dialog title={say('shopPage.crop')} onClose={onClose}>
			<div className="stack">
				<p>
					{say(isProposed ? 'shopPage.cropProposed' : 'shopPage.cropHow')}
					{left > 0 ? say('shopPage.more', { count: left }) : ''}
				</p>
				{address ? <BoxChooser address={address} box={box} label={say('shopPage.picture')} onChange={setBox} /> : null}
				<div className="row">
					<Button look="main" onPress={() => (whole ? onUse(file) : void crop())}>
						{whole ? say('shopPage.checkWhole') : say('shopPage.checkPiece')}
					</Button>
					{whole ? null : <Button onPress={() => onUse(file)}>{say('shopPage.takeWhole')}</Button>}
				</div>
				<Problem of={problem} />
			</div>
		</Dialog>
	);
}
