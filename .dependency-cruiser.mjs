/** The rules are made from the table of rooms; see tools/tidy/floors.ts. */
import { dependencyRules } from './tools/tidy/dependency-rules.ts';

export default {
  forbidden: dependencyRules(),
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^(build|\\.runtime)/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.base.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.json', '.css'],
    },
  },
};
