import type { Door } from '../../../../src/app/door.ts';

export type OpenDoor = Extract<Door, { shared: true }>;

const MINUTE_MS = 60_000;

/** 8 digits are easier to type in two groups. */
const grouped = (code: string): string => `${code.slice(0, 4)} ${code.slice(4)}`;

/** One address of this computer: as a picture for a phone's camera, and to type. */
function Address({ address, qr }: OpenDoor['addresses'][number]) {
	return (
		<figure className="door-address">
			<svg
				className="qr"
				viewBox={`0 0 ${qr.sideModules} ${qr.sideModules}`}
				shapeRendering="crispEdges"
				role="img"
				aria-label={`QR picture of the address ${address}`}
			>
				<rect width={qr.sideModules} height={qr.sideModules} className="qr-ground" />
				<path d={qr.path} className="qr-squares" />
			</svg>
			<figcaption>{address}</figcaption>
		</figure>
	);
}

/** How to let a device in: the address to open there, then the code to type. */
export function DoorCode({ door }: { door: OpenDoor }) {
	const minutes = Math.max(1, Math.ceil(door.validForMs / MINUTE_MS));
	return (
		<ol className="door-steps">
			<li className="stack">
				<p>
					<strong>On the phone,</strong> in the same network as this computer, point the camera at the picture, or type
					the address into its browser.
				</p>
				{door.addresses.length === 0 ? (
					<p className="warn">This computer is on no network now: join one, then load this page again.</p>
				) : (
					<div className="row">
						{door.addresses.map((one) => (
							<Address key={one.address} {...one} />
						))}
					</div>
				)}
			</li>
			<li className="stack">
				<p>
					<strong>Then type this code there.</strong> It is good for one device, and for {minutes}{' '}
					{minutes === 1 ? 'minute' : 'minutes'} more; after that a new one stands here.
				</p>
				<p className="door-code">{grouped(door.code)}</p>
			</li>
		</ol>
	);
}
