// A worker that reads nothing; scripted_pages.h tells what it does.

#include "work/job_server.h"
#include "work/scripted_pages.h"

#include <unistd.h>

int main() { return benchleaf::ServeJobs(STDIN_FILENO, STDOUT_FILENO, benchleaf::ScriptedAnswer); }
