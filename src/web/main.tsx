import { MantineProvider } from '@mantine/core';
import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { THEME } from './look/index.js';
import { ForceUnitProvider } from './parts/force-unit.js';
import { router } from './router.js';

const place = document.getElementById('page');
if (!place) throw new Error('Broken promise inside Tautwork: the page has no place to stand');

/** The demo day does not change while the page is open. */
const questions = new QueryClient({
  defaultOptions: { queries: { staleTime: Number.POSITIVE_INFINITY, retry: 1, refetchOnWindowFocus: false } },
});

createRoot(place).render(
  <StrictMode>
    <MantineProvider
      theme={THEME}
      defaultColorScheme="auto"
      // Both would write style elements into the page, which the server does not allow.
      withCssVariables={false}
      withGlobalClasses={false}
    >
      <QueryClientProvider client={questions}>
        <ForceUnitProvider>
          <RouterProvider router={router} />
        </ForceUnitProvider>
      </QueryClientProvider>
    </MantineProvider>
  </StrictMode>,
);
