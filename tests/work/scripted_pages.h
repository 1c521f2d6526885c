// A worker's answers without any reading: what it does with a file stands in the file, as lines after its first one.
//
//   pages N               how many pages it has; 1 when the line is missing
//   words P TEXT...       the words of page P, one below the other; a page without such a line has none
//   on P MODE ACT [N]     what happens when page P (0: counting) is asked for in MODE (full, plain, any):
//     crash | abort | exit N | hang | spin | memory     ends, or has to be ended
//     garbage | long | half | other-number | wrong-kind | twice      breaks the protocol
//     slow N              answers after N ms
//     damaged             answers with an error
//     missing             answers with an error that does not lie in the page
//     unfit               declares itself unfit
//     chatter             writes to standard error, then answers

#ifndef BENCHLEAF_TESTS_WORK_SCRIPTED_PAGES_H_
#define BENCHLEAF_TESTS_WORK_SCRIPTED_PAGES_H_

#include "work/protocol.h"

namespace benchleaf {

Answer ScriptedAnswer(const Job& job);

}  // namespace benchleaf

#endif  // BENCHLEAF_TESTS_WORK_SCRIPTED_PAGES_H_
