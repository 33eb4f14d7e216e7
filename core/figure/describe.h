// The words for a figure's moment, from the same key poses that it is drawn from. For core/figure alone;
// others call Figure::describe().
#pragma once

#include <string>

#include "core/figure/clip_book.h"
#include "core/figure/figure.h"

namespace newel {

std::string describeMoment(const Choreography& keys, const Moment& moment, const FigureBody& body,
                           const v1::Exercise& exercise, const ClipBook& clips, const std::string& language);

}  // namespace newel
