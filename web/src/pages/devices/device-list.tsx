import type { PairedDevice } from '../../../../src/app/sharing.ts';
import { momentText } from '../../../../src/language/numbers.ts';
import { say } from '../../../../src/language/speak.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { ActingTable } from '../../parts/acting-table.tsx';
import { Button } from '../../parts/button.tsx';
import { Problem } from '../../parts/problem.tsx';

function DeviceRow({ device, unpair }: { device: PairedDevice; unpair: () => void }) {
	return (
		<tr>
			<th scope="row">{device.device}</th>
			<td>{momentText(device.pairedAt)}</td>
			<td>{momentText(device.seenAt)}</td>
			<td>
				<Button
					small
					onPress={unpair}
					aria-label={say('devicesPage.sendAwayNamed', {
						device: device.device,
						moment: momentText(device.pairedAt),
					})}
				>
					{say('devicesPage.sendAway')}
				</Button>
			</td>
		</tr>
	);
}

/** The devices that may come in, each with when it was last seen, to be sent away one by one or all at once. */
export function DeviceList({ devices }: { devices: readonly PairedDevice[] }) {
	const unpair = useChange((id: string | null) =>
		id === null ? call('unpairDevices', {}) : call('unpairDevice', { params: { id } }),
	);
	if (devices.length === 0) return <p className="quiet">{say('devicesPage.none')}</p>;
	return (
		<div className="stack">
			<ActingTable headings={[say('devicesPage.device'), say('devicesPage.since'), say('devicesPage.seen')]}>
				{devices.map((device) => (
					<DeviceRow key={device.id} device={device} unpair={() => unpair.run(device.id)} />
				))}
			</ActingTable>
			<p className="quiet">{say('devicesPage.unused')}</p>
			<p>
				<Button onPress={() => unpair.run(null)}>{say('devicesPage.sendAllAway')}</Button>
			</p>
			<Problem of={unpair.problem} />
		</div>
	);
}
