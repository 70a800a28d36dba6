import { type ReactNode, useEffect } from 'react';
import { Dialog as AriaDialog } from 'react-aria-components/Dialog';
import { Heading } from 'react-aria-components/Heading';
import { Modal, ModalOverlay } from 'react-aria-components/Modal';
import { say } from '../../../src/language/speak.ts';
import { Button } from './button.tsx';

/** A sheet laid over the page. Escape, the close button and a click beside it end it. */
export function Dialog({
	title,
	narrow = false,
	onClose,
	children,
}: {
	title: string;
	narrow?: boolean;
	onClose: () => void;
	children: ReactNode;
}) {
	useEffect(() => {
		// A button that vanishes takes the focus with it; Escape must close the sheet all the same.
		const onKey = (event: KeyboardEvent) => {
			if (event.key === 'Escape' && document.activeElement === document.body) onClose();
		};
		document.addEventListener('keydown', onKey);
		return () => document.removeEventListener('keydown', onKey);
	}, [onClose]);
	return (
		<ModalOverlay className="shade" isOpen isDismissable onOpenChange={(open) => !open && onClose()}>
			<Modal className={narrow ? 'dialog dialog-narrow' : 'dialog'}>
				<AriaDialog>
					<div className="dialog-head">
						<Heading slot="title" level={2}>
							{title}
						</Heading>
						<Button small onPress={onClose}>
							{say('frame.close')}
						</Button>
					</div>
					{children}
				</AriaDialog>
			</Modal>
		</ModalOverlay>
	);
}
