/** In this order: most browsers also name those further down. From memory. */
const BROWSERS = [
	['Edge', /\bEdgA?(iOS)?\//],
	['Opera', /\bOPR\//],
	['Samsung Internet', /\bSamsungBrowser\//],
	['Firefox', /\b(Firefox|FxiOS)\//],
	['Chrome', /\b(Chrome|CriOS|HeadlessChrome)\//],
	['Safari', /\bSafari\//]
] as const;

const SYSTEMS = [
	['iPhone', /\biPhone\b/],
	['iPad', /\biPad\b/],
	['Android', /\bAndroid\b/],
	['Windows', /\bWindows\b/],
	['ChromeOS', /\bCrOS\b/],
	['macOS', /\bMac OS X\b/],
	['Linux', /\bLinux\b/]
] as const;

/**
 * What a browser calls itself, as far as a person tells devices apart by it.
 * @example browserOf('Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Gecko/20100101 Firefox/140.0').system // 'Linux'
 */
export function browserOf(agent: string): { browser: string | null; system: string | null } {
	return { browser: first(BROWSERS, agent), system: first(SYSTEMS, agent) };
}

const first = (names: readonly (readonly [string, RegExp])[], agent: string) =>
	names.find(([, sign]) => sign.test(agent))?.[0] ?? null;
