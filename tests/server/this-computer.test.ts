import { describe, expect, it } from 'vitest';
import { comesFromThisComputer, isThisComputer } from '$lib/server/this-computer.ts';
import { askedFrom } from './asked-from.ts';

const bare = { addressHeader: null };
const comes = (...from: Parameters<typeof askedFrom>) =>
	comesFromThisComputer(askedFrom(...from), bare);

// Loopback addresses: RFC 1122, 3.2.1.3 and RFC 4291, 2.5.3 and 2.5.5.2. The rest is our own rule.
describe('that a request comes from the computer of the server', () => {
	it.each(['127.0.0.1', '127.255.255.254', '::1', '::ffff:127.0.0.1', '::FFFF:127.0.0.1'])(
		'is believed of %s',
		(address) => {
			expect(comes(address)).toBe(true);
			expect(comes(address, 'http://127.0.0.1:3000')).toBe(true);
			expect(comes(address, 'http://[::1]:3000')).toBe(true);
		}
	);

	it.each([
		...['', '0.0.0.0', '10.0.0.1', '192.168.1.7', '172.17.0.1', '203.0.113.9', '128.0.0.1'],
		...[
			'::',
			'::2',
			'fe80::1',
			'2001:db8::1',
			'::ffff:10.0.0.1',
			'127.0.0.1.example.org',
			'localhost'
		]
	])('is not believed of "%s", whatever name it typed', (address) => {
		expect(comes(address)).toBe(false);
	});

	it('is not believed where it typed another name', () => {
		for (const name of ['run.example.org', '192.168.1.7', 'localhost.org']) {
			const origin = `http://${name}`;
			expect(isThisComputer(new URL(origin))).toBe(false);
			expect(comes('127.0.0.1', origin)).toBe(false);
		}
	});

	it.each(['X-Forwarded-For', 'Forwarded', 'Via', 'X-Real-IP', 'X-Forwarded-Host'])(
		'is not believed where a proxy says %s, even of this computer',
		(name) => {
			expect(comes('127.0.0.1', undefined, { [name]: '127.0.0.1' })).toBe(false);
			expect(comes('127.0.0.1', undefined, { [name]: '' })).toBe(false);
		}
	);

	it('is not believed over https, which only something in front of the server speaks', () => {
		expect(comes('127.0.0.1', 'https://localhost:4173')).toBe(false);
	});

	it('is not believed, and the address not even asked for, where a proxy is configured', () => {
		const asked = askedFrom('127.0.0.1');
		const throws = () => {
			throw new Error('the header is missing');
		};
		const behind = { addressHeader: 'X-Forwarded-For' };
		expect(comesFromThisComputer({ ...asked, getClientAddress: throws }, behind)).toBe(false);
	});
});
