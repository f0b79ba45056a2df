import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          environment: 'node',
          include: ['tests/{calc,reference,units,record,app}/**/*.test.ts'],
        },
      },
    ],
  },
});
