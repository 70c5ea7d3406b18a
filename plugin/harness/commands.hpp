#pragma once
// The bodies of the plug-in's commands; plugin.cpp gives them their names.

#include <nlohmann/json_fwd.hpp>

#include "plugin/harness/command.hpp"

namespace spotblue::plugin {

nlohmann::ordered_json look_command(Session& session, const Arguments& arguments);
nlohmann::ordered_json features_command(Session& session, const Arguments& arguments);
nlohmann::ordered_json seats_command(Session& session, const Arguments& arguments);
nlohmann::ordered_json fouls_command(Session& session, const Arguments& arguments);
nlohmann::ordered_json check_command(Session& session, const Arguments& arguments);
nlohmann::ordered_json findings_command(Session& session, const Arguments& arguments);
nlohmann::ordered_json class_command(Session& session, const Arguments& arguments);
nlohmann::ordered_json classes_command(Session& session, const Arguments& arguments);
nlohmann::ordered_json take_command(Session& session, const Arguments& arguments);
nlohmann::ordered_json mark_command(Session& session, const Arguments& arguments);
nlohmann::ordered_json show_command(Session& session, const Arguments& arguments);
nlohmann::ordered_json keep_command(Session& session, const Arguments& arguments);
nlohmann::ordered_json kept_command(Session& session, const Arguments& arguments);
nlohmann::ordered_json save_command(Session& session, const Arguments& arguments);

}  // namespace spotblue::plugin
