// The sizes of letter a report is set in, all in one place.
#pragma once

#include "app/print/layout/faces.h"

namespace headcap::app::print {

inline const Type kBody{Family::text, 10.5, 14};
inline const Type kStatement{Family::text, 10.5, 14, Ink::text, true};
inline const Type kTable{Family::text, 9.5, 12.5};
inline const Type kCaption{Family::text, 9, 12};
inline const Type kLabel{Family::label, 7.75, 14, Ink::quiet};
inline const Type kColumnHead{Family::label, 7.25, 9.5, Ink::quiet};
inline const Type kCautionTitle{Family::label, 8.25, 14, Ink::warning, false, true};
inline const Type kTitle{Family::text, 29, 34};
inline const Type kSubtitle{Family::text, 15, 21, Ink::text, true};
inline const Type kSection{Family::text, 14.5, 18};
inline const Type kSubsection{Family::text, 11.5, 14, Ink::text, false, true};
inline const Type kSubheading{Family::text, 10.5, 14, Ink::text, false, true};
inline const Type kFurniture{Family::label, 7.25, 10, Ink::quiet};
inline const Type kRunningTitle{Family::text, 9, 12, Ink::quiet, true};
inline const Type kHouse{Family::text, 17, 21};
inline const Type kDraft{Family::label, 9, 12, Ink::warning, false, true, 0.9};
inline const Type kDraftEdge{Family::label, 7.25, 10, Ink::warning, false, true, 0.7};

} // namespace headcap::app::print
