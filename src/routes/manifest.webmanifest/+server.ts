import { LANGUAGE } from '$words/locale.ts';
import { manifest } from '$words/manifest.ts';
import { site } from '$words/site.ts';
import type { RequestHandler } from './$types';

const icon = (src: string, sizes: string, purpose: 'any' | 'maskable' = 'any') => ({
	src,
	sizes,
	type: src.endsWith('.svg') ? 'image/svg+xml' : 'image/png',
	purpose
});

/** Web Application Manifest, W3C: what a phone needs to put the app on its home screen. */
const written = JSON.stringify({
	id: '/',
	lang: LANGUAGE,
	name: site.name,
	short_name: site.name,
	description: manifest.description,
	start_url: '/',
	display: 'standalone',
	background_color: '#faf6ee',
	theme_color: '#4f2c63',
	icons: [
		icon('/icon.svg', 'any'),
		icon('/icon-192.png', '192x192'),
		icon('/icon-512.png', '512x512'),
		icon('/icon-maskable-512.png', '512x512', 'maskable')
	],
	shortcuts: [{ name: manifest.startOuting, url: '/prompter' }]
});

export const GET: RequestHandler = () =>
	new Response(written, { headers: { 'content-type': 'application/manifest+json' } });
