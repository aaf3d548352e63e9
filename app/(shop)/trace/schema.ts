import { z } from 'zod';
import { words } from '@/app/(shop)/_parts/acts/schemas';
import { TRACE_KINDS } from '@/shared/trace/trace-graph';

const id = z.int().positive();

export const holdAllSchema = z.object({ kind: z.enum(TRACE_KINDS), id, wide: z.boolean(), why: words(500) });

export const releaseAllSchema = z.object({ entryId: id, why: words(500) });
