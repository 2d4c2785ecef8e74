import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

/*
 * A PostgreSQL for the server tests. In this order: the one that TEST_DATABASE_URL names (a user
 * who may create databases), a temporary cluster on a unix socket, or, on Debian as root, the same
 * after installing the package.
 */

declare module 'vitest' {
	export interface ProvidedContext {
		/** Address of a maintenance database; tests make their own databases beside it. */
		postgresUrl: string;
	}
}

const root = process.getuid?.() === 0;

export default function setup(project: TestProject): () => void {
	const given = process.env.TEST_DATABASE_URL;
	const cluster = given ? null : startCluster();
	project.provide('postgresUrl', given ?? cluster?.url ?? '');
	return () => cluster?.stop();
}

function startCluster(): { url: string; stop: () => void } {
	const bin = binaries();
	const folder = mkdtempSync(join(tmpdir(), 'breathmark-postgres-'));
	const data = join(folder, 'data');
	// PostgreSQL refuses to run as root.
	if (root) execFileSync('chown', ['postgres', folder]);
	run(join(bin, 'initdb'), [
		'-D',
		data,
		'-U',
		'postgres',
		'-A',
		'trust',
		'-E',
		'UTF8',
		'--no-sync'
	]);
	// Nothing here outlives the tests, so nothing waits for the disk; no network, only the socket.
	const options = `-k ${folder} -c listen_addresses= -c fsync=off -c full_page_writes=off`;
	const log = join(folder, 'log');
	run(join(bin, 'pg_ctl'), ['-D', data, '-w', '-s', '-l', log, '-o', options, 'start']);
	return {
		url: `postgres://postgres@localhost/postgres?host=${encodeURIComponent(folder)}`,
		stop() {
			run(join(bin, 'pg_ctl'), ['-D', data, '-w', '-s', '-m', 'immediate', 'stop']);
			rmSync(folder, { recursive: true, force: true });
		}
	};
}

function binaries(): string {
	const found = find();
	if (found) return found;
	if (root && existsSync('/etc/debian_version')) {
		// A fresh machine has no list of packages, or an old one.
		spawnSync('apt-get', ['update'], { stdio: 'ignore' });
		spawnSync('apt-get', ['install', '-y', 'postgresql'], { stdio: 'ignore' });
		const installed = find();
		if (installed) return installed;
	}
	throw new Error(
		'The server tests need PostgreSQL: install it, or set TEST_DATABASE_URL to one whose user may create databases.'
	);
}

/** Debian keeps each version's programs apart from the path; the newest is taken. */
function find(): string | null {
	const versions = '/usr/lib/postgresql';
	const installed = existsSync(versions)
		? readdirSync(versions).sort((a, b) => Number(b) - Number(a))
		: [];
	const folders = [
		...installed.map((version) => join(versions, version, 'bin')),
		...(process.env.PATH ?? '').split(':')
	];
	return folders.find((folder) => existsSync(join(folder, 'initdb'))) ?? null;
}

function run(program: string, parameters: readonly string[]): void {
	const [command, ...rest] = root
		? ['runuser', '-u', 'postgres', '--', program, ...parameters]
		: [program, ...parameters];
	const { status, stderr, error } = spawnSync(command ?? program, rest, {
		cwd: '/',
		// runuser is a program for administrators, which a short PATH leaves out.
		env: { ...process.env, PATH: `${process.env.PATH ?? ''}:/usr/sbin:/sbin` },
		encoding: 'utf8',
		stdio: ['ignore', 'ignore', 'pipe']
	});
	if (status !== 0) throw new Error(`${program} failed: ${error?.message ?? stderr}`);
}
