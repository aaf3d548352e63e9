-- The pieces that a job let go of, which a trace asks for. Prisma does not know an index of some rows only; nearly all
-- movements are of things that are no job's, and are not in it.
CREATE INDEX "Movement_left_job_idx" ON "Movement"("jobFromId", "stockId", "entryId") WHERE "jobFromId" IS NOT NULL;
