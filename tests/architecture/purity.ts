import { Linter } from 'eslint';
import typescript from 'typescript-eslint';
import { pureFolders, pureRules } from '../../.setup/lint-pure.js';
import type { SourceFile } from './source-file.ts';

const linter = new Linter();

/** What lint says of the pure folders, with no comment able to silence it. */
export function impurities(files: readonly SourceFile[]): string[] {
	return files
		.filter(({ path }) => pureFolders.some((folder) => path.startsWith(`src/lib/${folder}/`)))
		.flatMap(({ path, text }) =>
			linter
				.verify(
					text,
					[
						{
							files: ['**/*.ts'],
							languageOptions: { parser: typescript.parser },
							linterOptions: { noInlineConfig: true },
							rules: pureRules
						}
					],
					path
				)
				.map(({ line, message }) => `${path}:${line} ${message}`)
		);
}
